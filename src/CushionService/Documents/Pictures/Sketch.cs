using CushionService.Documents.Drawings;
using CushionService.Engine.Scenes;

namespace CushionService.Documents.Pictures;

/// <summary>The shapes of a view, from the furthest to the nearest.</summary>
/// <param name="camera">Looks at the scene.</param>
/// <param name="frame">Where the view lies in the picture.</param>
internal sealed class Sketch(Camera camera, Frame frame)
{
    /// <summary>Looks at the scene.</summary>
    public Camera Camera { get; } = camera;

    /// <summary>Units of the picture in a millimetre.</summary>
    public double Scale => frame.Scale;

    /// <summary>The shapes so far, in units of the picture.</summary>
    public List<Shape> Shapes { get; } = [];

    /// <summary>Where a point of the scene is seen.</summary>
    public Spot At(Vector point) => frame.At(Camera.See(point));

    /// <summary>Where a point of the view lies.</summary>
    public Spot At(Spot seen) => frame.At(seen);

    /// <summary>Draws a polygon.</summary>
    public void Fill(IEnumerable<Vector> points, Ink ink) => Add([.. points.Select(At)], true, ink);

    /// <summary>Draws a line.</summary>
    public void Draw(IEnumerable<Vector> points, Ink ink) => Add([.. points.Select(At)], false, ink);

    /// <summary>Adds a shape.</summary>
    /// <param name="points">In units of the picture.</param>
    /// <param name="closed">Whether the last joins the first.</param>
    /// <param name="ink">How it is drawn.</param>
    public void Add(IReadOnlyList<Spot> points, bool closed, Ink ink)
    {
        if (points.Count > (closed ? 2 : 1))
        {
            Shapes.Add(new Shape(points, closed, ink));
        }
    }
}
