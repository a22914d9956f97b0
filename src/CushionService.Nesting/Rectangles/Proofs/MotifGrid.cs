namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>A straight grid of test points on the fabric, a repeat apart each way, and how many of them a piece covers.</summary>
/// <remarks>A rectangle covers a point when the point lies in it, its left and lower edges included. Two pieces that share no area cover no
/// point together. An aligned piece lies at its phase plus whole repeats, so that it covers the same number of columns and rows of points
/// wherever it lies. Any other piece covers at least one for each whole repeat of its extents.</remarks>
/// <param name="Width">Distance of the columns, in grid units; 0 when nothing repeats across, where a piece takes its own width.</param>
/// <param name="Length">Distance of the rows, in grid units, above 0.</param>
/// <param name="X">The x of a column, from 0 and below <paramref name="Width"/>; without meaning when that is 0.</param>
/// <param name="Y">The y of a row, from 0 and below <paramref name="Length"/>.</param>
internal readonly record struct MotifGrid(long Width, long Length, long X, long Y)
{
    /// <summary>The columns that a piece can cover, wherever it lies on a strip.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="strip">Width of the strip, in grid units.</param>
    /// <returns>The first column and the last; the last lies before the first when the piece fits the strip nowhere. Where nothing repeats
    /// across, a column is a grid unit.</returns>
    public (long First, long Last) Reach(NestingPiece piece, long strip)
    {
        if (Width == 0)
        {
            return (0, strip - 1);
        }

        if (piece.Alignment is not { } phase)
        {
            return (0, Floor(strip - 1 - X, Width));
        }

        // Of an aligned piece only whole repeats from its first place to its last one count.
        long first = Modulo(phase.PhaseX, Width);
        long room = strip - piece.Width - first;
        return room < 0 ? (0, -1) : (-Floor(X - first, Width), Floor(first + room / Width * Width + piece.Width - 1 - X, Width));
    }

    /// <summary>The columns that a piece covers at least.</summary>
    /// <param name="piece">The piece.</param>
    /// <returns>0 when it may lie between two columns.</returns>
    public long Across(NestingPiece piece) =>
        Width == 0 ? Turned(piece, 1, piece.Width, piece.Length)
        : piece.Alignment is { } phase ? Covered(X - phase.PhaseX, piece.Width, Width)
        : Turned(piece, Width, piece.Width, piece.Length);

    /// <summary>The rows that a piece covers at least.</summary>
    /// <param name="piece">The piece.</param>
    /// <returns>0 when it may lie between two rows.</returns>
    public long Along(NestingPiece piece) =>
        piece.Alignment is { } phase ? Covered(Y - phase.PhaseY, piece.Length, Length) : Turned(piece, Length, piece.Length, piece.Width);

    /// <summary>Where a piece ends at least that covers a row of points or one further up.</summary>
    /// <param name="piece">The piece; it covers a row.</param>
    /// <param name="row">The row, from 0.</param>
    /// <returns>Grid units. The end of an aligned piece is at a known place of the repeat, the first of which beyond the row is
    /// taken.</returns>
    public long End(NestingPiece piece, long row)
    {
        long beyond = Y + row * Length + 1;
        if (piece.Alignment is not { } phase)
        {
            return beyond;
        }

        long lowest = Modulo(phase.PhaseY, Length) + piece.Length;
        return Math.Max(lowest, beyond + Modulo(lowest - beyond, Length));
    }

    /// <summary>The remainder from 0 up to less than the modulus.</summary>
    public static long Modulo(long value, long modulus)
    {
        long rest = value % modulus;
        return rest < 0 ? rest + modulus : rest;
    }

    private static long Floor(long dividend, long divisor) => (dividend - Modulo(dividend, divisor)) / divisor;

    // Points at 'first' from the edge and every repeat after it.
    private static long Covered(long first, long extent, long repeat)
    {
        first = Modulo(first, repeat);
        return extent > first ? (extent - 1 - first) / repeat + 1 : 0;
    }

    /// <summary>Whole repeats in an extent, or in the lesser of two for a piece that may
    /// turn.</summary>
    private static long Turned(NestingPiece piece, long repeat, long extent, long other) =>
        (piece.Rotations == Rotations.QuarterTurns ? Math.Min(extent, other) : extent) / repeat;
}
