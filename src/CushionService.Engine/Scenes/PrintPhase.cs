using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Scenes;

/// <summary>Where the motif of a fabric lies on a panel, as the panel lies on the fabric: its middle, and the steps to its neighbours, in
/// millimetres of the panel.</summary>
/// <param name="Motif">The middle of one motif.</param>
/// <param name="Across">From a motif to the next across the fabric, the drop included; null where nothing repeats across.</param>
/// <param name="Along">From a motif to the next along the fabric; null where nothing repeats along.</param>
/// <param name="Warp">The way that the fabric runs, one long.</param>
public sealed record PrintPhase(PlanePoint Motif, PlanePoint? Across, PlanePoint? Along, PlanePoint Warp)
{
    /// <summary>The phase on a piece as it is laid; null on a fabric without a repeat.</summary>
    /// <param name="laid">The piece as it lies.</param>
    /// <param name="layout">The layout that it lies in.</param>
    public static PrintPhase? Of(LaidPiece laid, FabricLayout layout)
    {
        if (layout.Fabric.LaidRepeat is not { } repeat)
        {
            return null;
        }

        // From the fabric's coordinates to the piece's as drawn: the turn is counter-clockwise, round the laid lower left corner.
        Length x = layout.MotifX ?? repeat.MotifX ?? Length.Zero,
            y = layout.MotifX is null ? Length.Zero : layout.MotifStart;
        var motif = new PlanePoint(Mm(x - laid.X), Mm(y - laid.Y));
        // A layout without a phase of its own shows the motif where the fabric says that one lies, from the first cut on.
        double drop = Mm(repeat.DropLength);
        return new PrintPhase(
            Made(laid.Piece, Turned(motif, laid) - PlanePoint.Of(laid.Piece.Origin)),
            repeat.Width is { } width ? Step(new PlanePoint(Mm(width), drop)) : null,
            repeat.Length is { } length ? Step(new PlanePoint(0, Mm(length))) : null,
            Direction(laid, new PlanePoint(0, 1))
        );

        PlanePoint Step(PlanePoint way) => Made(laid.Piece, Direction(laid, way));
    }

    private static double Mm(Length length) => length.Nanometres / 1e6;

    // The other way round than the piece was turned.
    private static PlanePoint Direction(LaidPiece laid, PlanePoint way) =>
        laid.Turn switch
        {
            90 => new(way.Y, -way.X),
            180 => new(-way.X, -way.Y),
            270 => new(-way.Y, way.X),
            _ => way,
        };

    private static PlanePoint Turned(PlanePoint at, LaidPiece laid)
    {
        (double width, double length) = (Mm(laid.Piece.Width), Mm(laid.Piece.Length));
        PlanePoint turned = Direction(laid, at);
        return laid.Turn switch
        {
            90 => turned with { Y = turned.Y + length },
            180 => new(turned.X + width, turned.Y + length),
            270 => turned with { X = turned.X + width },
            _ => turned,
        };
    }

    // What stitching draws in is spread evenly over the panel.
    private static PlanePoint Made(CutPiece piece, PlanePoint flat) =>
        piece.Panel is not { } panel
            ? flat
            : new PlanePoint(Made(flat.X, panel.Width, panel.TakeUpAcross), Made(flat.Y, panel.Height, panel.TakeUpAlong));

    // Tufting and channels draw a larger panel in to its finished size, and the print with it.
    private static double Made(double flat, Length size, Length takeUp) =>
        takeUp == Length.Zero ? flat : flat * size.Nanometres / (size + takeUp).Nanometres;
}
