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
    /// <param name="point">In millimetres of the scene.</param>
    public Spot At(Vector point) => frame.At(Camera.See(point));

    /// <summary>Where a point of the view lies.</summary>
    /// <param name="seen">In millimetres of the view.</param>
    public Spot At(Spot seen) => frame.At(seen);

    /// <summary>Draws a polygon.</summary>
    /// <param name="points">Of the scene, in order; the last is joined to the first.</param>
    /// <param name="ink">How it is drawn.</param>
    public void Fill(IEnumerable<Vector> points, Ink ink) => Add([.. points.Select(At)], true, ink);

    /// <summary>Draws a line.</summary>
    /// <param name="points">Of the scene, in order.</param>
    /// <param name="ink">How it is drawn.</param>
    public void Draw(IEnumerable<Vector> points, Ink ink) => Add([.. points.Select(At)], false, ink);

    /// <summary>Adds a shape.</summary>
    /// <param name="points">In units of the picture.</param>
    /// <param name="closed">Whether the last joins the first.</param>
    /// <param name="ink">How it is drawn.</param>
    public void Add(IReadOnlyList<Spot> points, bool closed, Ink ink)
    {
        // A polygon that has no area, or a line without length, would be a path that nothing shows.
        if (points.Count > (closed ? 2 : 1))
        {
            Shapes.Add(new Shape(points, closed, ink));
        }
    }
}
