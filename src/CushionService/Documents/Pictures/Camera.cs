using CushionService.Documents.Drawings;
using CushionService.Engine.Scenes;

namespace CushionService.Documents.Pictures;

/// <summary>Looks at a scene from the right of its front and from above, all lengths along one direction to one scale (an axonometric
/// view).</summary>
/// <param name="turn">How the cushion is turned before it is looked at.</param>
internal sealed class Camera(CameraTurn turn)
{
    /// <summary>How the cushion is turned before it is looked at.</summary>
    public CameraTurn Turn => turn;

    // Horizontal angle off the front, and angle above the floor, in radians.
    private const double Aside = 0.48;
    private const double Above = 0.56;

    // The axes of the picture, one long and square to each other, in the coordinates of the scene.
    private static readonly Vector Right = new(Math.Cos(Aside), Math.Sin(Aside), 0);
    private static readonly Vector Away = new(-Math.Sin(Aside), Math.Cos(Aside), 0);
    private static readonly Vector Towards = -Math.Cos(Above) * Away + Math.Sin(Above) * Vector.Up;
    private static readonly Vector Upward = Math.Sin(Above) * Away + Math.Cos(Above) * Vector.Up;

    // From the left, the front and above: the front of a cushion is then darker than its top, and its right side darker still.
    private static readonly Vector Light = new Vector(-0.35, -0.55, 0.9).Unit();

    /// <summary>How much of a height is seen, and how much of a way to the back.</summary>
    public static (double Height, double Depth) Shares { get; } = (Math.Cos(Above), Math.Sin(Above));

    /// <summary>A point or a direction as it lies once the cushion is turned: half round, so that no mirror image is made.</summary>
    /// <param name="at">A point, or a direction, of the scene as the cushion lies.</param>
    public Vector Turned(Vector at) =>
        turn switch
        {
            CameraTurn.Over => new Vector(at.X, -at.Y, -at.Z),
            CameraTurn.Across => new Vector(-at.X, at.Y, -at.Z),
            _ => at,
        };

    /// <summary>Where a point is seen, in millimetres of the scene, y downwards.</summary>
    /// <param name="at">A point of the scene, in millimetres.</param>
    public Spot See(Vector at)
    {
        Vector turned = Turned(at);
        return new Spot(turned.Dot(Right), -turned.Dot(Upward));
    }

    /// <summary>How much a direction points towards the viewer, from -1 to 1.</summary>
    /// <param name="direction">One long, as the cushion lies.</param>
    public double Facing(Vector direction) => Turned(direction).Dot(Towards);

    /// <summary>Where a point is on the floor: across the view, and away from the viewer.</summary>
    /// <param name="at">A point of the scene.</param>
    /// <returns>In millimetres: x to the right of the view, y away from the viewer. Heights do not matter to
    /// it.</returns>
    public PlanePoint Plan(Vector at)
    {
        Vector turned = Turned(at);
        return new PlanePoint(turned.Dot(Right), turned.Dot(Away));
    }

    /// <summary>How far a point is from the viewer, up to a constant.</summary>
    /// <param name="at">A point of the scene.</param>
    /// <returns>In millimetres; only differences between depths mean something.</returns>
    public double Depth(Vector at) => -Turned(at).Dot(Towards);

    /// <summary>Whether a direction points upwards rather than sideways.</summary>
    /// <param name="direction">One long: it points upwards when it leans less than about 57° from upright.</param>
    public bool IsUp(Vector direction) => Turned(direction).Z > 0.55;

    /// <summary>How dark a surface is, from 0 in full light.</summary>
    /// <param name="normal">Away from the filling; of any length.</param>
    /// <returns>The opacity of the shade, at most 0.36, so that the colour of the fabric can still be told.</returns>
    public double Shade(Vector normal) => Math.Clamp(0.27 * (0.8 - Turned(normal).Unit().Dot(Light)), 0, 0.36);
}
