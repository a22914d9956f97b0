using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Layouts;

/// <summary>Where a piece must lie so that a motif falls on its matching point: faces carry one in their middle, and the front boxing
/// carries the face's pattern on over the edge.</summary>
/// <remarks>Piece origin = motif − matching point, modulo the repeat. One motif is on the fabric's centre line (common practice, no
/// source).</remarks>
internal static class MotifMatch
{
    /// <summary>The lattice of a fabric's repeat on a grid; null when it has none.</summary>
    public static RepeatLattice? Lattice(FabricSpecification fabric, Grid grid) =>
        fabric.LaidRepeat is { } repeat
            ? new RepeatLattice(repeat.Width is { } width ? grid.Down(width) : 0, grid.Down(repeat.Length), grid.Down(Drop(repeat)))
            : null;

    /// <summary>Where the lower left corner of a piece must lie, modulo the repeat; null when the piece is not matched.</summary>
    public static Point? Corner(CutPiece piece, FabricSpecification fabric)
    {
        if (fabric.LaidRepeat is not { } repeat || piece.Panel?.Match is not { } match)
        {
            return null;
        }

        Point point = piece.AsLaid(match.Moved(piece.Origin.X, piece.Origin.Y));
        Point corner = new Point(fabric.UsableWidth.HalfUp(), Length.Zero).Moved(-point.X, -point.Y);
        if (repeat.Width is not { } width)
        {
            return new Point(Length.Zero, Modulo(corner.Y, repeat.Length));
        }

        // A column further across, the motif stands a drop further along.
        Length across = Modulo(corner.X, width);
        long columns = (corner.X - across).Nanometres / width.Nanometres;
        return new Point(across, Modulo(corner.Y - columns * Drop(repeat), repeat.Length));
    }

    /// <summary>Whether a matched piece finds a place across the fabric at all.</summary>
    public static bool FitsAcross(CutPiece piece, Point corner, FabricSpecification fabric) =>
        corner.X + piece.Across <= fabric.UsableWidth;

    private static Length Drop(RepeatSpecification repeat) =>
        repeat is { Drop: DropKind.Half, Width: not null } ? repeat.Length.HalfUp() : Length.Zero;

    private static Length Modulo(Length length, Length repeat)
    {
        long rest = length.Nanometres % repeat.Nanometres;
        return Length.FromNanometres(rest < 0 ? rest + repeat.Nanometres : rest);
    }
}
