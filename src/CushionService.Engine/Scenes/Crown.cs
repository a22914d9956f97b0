using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;

namespace CushionService.Engine.Scenes;

/// <summary>How far the filling rounds a face up over its seam line: a hint for pictures, not a measure.</summary>
/// <remarks>A box rises within a third of its lesser half width and is level beyond; a cover without sides rises all the way to its middle,
/// as half an ellipse does. The heights are a choice of ours, no source.</remarks>
public sealed class Crown
{
    // Shares of half the lesser width: how far in from the rim a box goes on rising, and how high each fill lifts its
    // face.
    private const double BoxReach = 0.7;
    private const double Foam = 0.02;
    private const double Wrapped = 0.05;
    private const double Loose = 0.1;
    private const double Pillow = 0.46;
    private readonly IReadOnlyList<PlanePoint> _rim;
    private readonly double _reach;
    private readonly bool _isPillow;

    private Crown(IReadOnlyList<PlanePoint> rim, double reach, double height, bool isPillow) =>
        (_rim, _reach, Height, _isPillow) = (rim, reach, height, isPillow);

    /// <summary>The most that it rises, in millimetres.</summary>
    public double Height { get; }

    /// <summary>The crown of a patch; null for one that stays flat.</summary>
    /// <param name="patch">A patch of the scene.</param>
    /// <param name="cushion">Its cushion; the fill says how high a box rises.</param>
    /// <remarks>A patch that bends is left as it is: its own surface says how it runs.</remarks>
    public static Crown? Of(ScenePatch patch, CushionSpecification cushion)
    {
        if (patch.Kind is not (PatchKind.Face or PatchKind.Pillow) || patch.Surface.Bends.Count > 0)
        {
            return null;
        }

        double half = Middle(patch.Rim);
        return patch.Kind == PatchKind.Pillow
            ? new Crown(patch.Rim, half, Pillow * half, true)
            : new Crown(patch.Rim, BoxReach * half, Rise(cushion.Fill) * half, false);
    }

    /// <summary>How far a point is inside the rim, as a share of the way to where it rises no more: 0 at the rim, and at most 1.</summary>
    /// <param name="point">On the panel, in millimetres.</param>
    public double Share(PlanePoint point) => Math.Clamp(PlanePolygon.Inside(_rim, point) / _reach, 0, 1);

    /// <summary>How far the face rises at a point, in millimetres.</summary>
    /// <param name="point">On the panel, in millimetres.</param>
    /// <returns>From 0 at the rim to <see cref="Height"/>.</returns>
    public double At(PlanePoint point)
    {
        // A quarter of an ellipse leaves the rim upright, as a pillow does; a parabola leaves it at a slope, as foam
        // does.
        double down = 1 - Share(point);
        return Height * (_isPillow ? Math.Sqrt(1 - (down * down)) : 1 - (down * down));
    }

    private static double Rise(FillSpecification? fill) =>
        fill switch
        {
            null or { Kind: FillKind.Foam, Wrap: null } => Foam,
            { Kind: FillKind.Foam } => Wrapped,
            _ => Loose,
        };

    // The largest distance from the rim, looked for on a grid.
    private static double Middle(IReadOnlyList<PlanePoint> rim)
    {
        // A hint for a picture: the true middle of an outline would need a search, and differs by less than a cell.
        const int Cells = 16;
        (PlanePoint low, PlanePoint high) = PlanePolygon.Extent(rim);
        double most = 0;
        for (var i = 1; i < Cells; i++)
        {
            for (var j = 1; j < Cells; j++)
            {
                var at = new PlanePoint(low.X + ((high.X - low.X) * i / Cells), low.Y + ((high.Y - low.Y) * j / Cells));
                most = Math.Max(most, PlanePolygon.Inside(rim, at));
            }
        }

        return most;
    }
}
