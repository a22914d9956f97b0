using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Layouts;

/// <summary>Where a piece must lie so that a motif falls on its matching point.</summary>
/// <remarks>Piece origin = motif − matching point, modulo the repeat; a column further across, the motif is a drop further
/// along.</remarks>
internal static class MotifMatch
{
    /// <summary>Where the lower left corner of a piece must lie, modulo the repeat; null when the piece is not to be matched.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="fabric">Its fabric.</param>
    /// <param name="motif">A motif on the fabric as it is laid out.</param>
    public static Point? Corner(CutPiece piece, FabricSpecification fabric, Point motif)
    {
        if (fabric.LaidRepeat is not { } repeat || piece.Panel?.Match is not { } match)
        {
            return null;
        }

        Point point = piece.AsLaid(match.Moved(piece.Origin.X, piece.Origin.Y)),
            corner = motif.Moved(-point.X, -point.Y);
        if (repeat.Width is not { } width)
        {
            return new Point(Length.Zero, Along(corner.Y));
        }

        // The column that is counted from is the motif's own; going back to the first one takes a drop off for each
        // column between.
        Length across = Modulo(corner.X, width);
        long columns = (corner.X - across).Nanometres / width.Nanometres;
        return new Point(across, Along(corner.Y - columns * repeat.DropLength));

        Length Along(Length y) => repeat.Length is { } length ? Modulo(y, length) : Length.Zero;
    }

    /// <summary>A length less the whole repeats that it holds, at least zero.</summary>
    /// <param name="length">Of either sign.</param>
    /// <param name="repeat">Above zero.</param>
    public static Length Modulo(Length length, Length repeat)
    {
        long rest = length.Nanometres % repeat.Nanometres;
        return Length.FromNanometres(rest < 0 ? rest + repeat.Nanometres : rest);
    }
}
