using System.Globalization;
using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Layouts;

/// <summary>A length that no layout of matched pieces can beat: those of one size and phase lie in the columns of the repeat, and in a
/// column they lie whole repeats apart.</summary>
/// <param name="Length">The length.</param>
/// <param name="Count">How many pieces share the size and the phase.</param>
/// <param name="Beside">How many of them lie beside each other at most.</param>
/// <param name="Pitch">From the start of one to the start of the next in a column.</param>
/// <remarks>Of k columns W apart, those within ⌈w / W⌉ of each other overlap for pieces of width w, so that q = ⌈k / ⌈w / W⌉⌉ groups
/// of columns hold one piece beside the other. One group holds at least ⌈n / q⌉ of n pieces, a pitch apart each (pigeonhole
/// principle). Trade reference: pitch = ⌈l / R⌉ R, and (N − 1) pitch + l for N cuts in a column (common practice, no source).</remarks>
internal readonly record struct ColumnBound(Length Length, int Count, long Beside, Length Pitch)
{
    /// <summary>The longest bound over the pieces of each size and phase; zero where none is matched.</summary>
    /// <param name="fabric">A fabric with a repeat.</param>
    /// <param name="pieces">Its pieces.</param>
    /// <param name="x">Where the motif is across.</param>
    /// <remarks>Where the motif is unknown along, the layout starts with the pieces; else with the cut.</remarks>
    public static ColumnBound Of(FabricSpecification fabric, IReadOnlyList<CutPiece> pieces, Length x)
    {
        RepeatSpecification repeat = fabric.LaidRepeat!;
        Point motif = new(x, repeat.MotifY ?? Length.Zero);
        var longest = default(ColumnBound);
        foreach (
            var same in pieces
                .Select(piece => (piece, Corner: MotifMatch.Corner(piece, fabric, motif)))
                .Where(matched => matched.Corner is { } corner && corner.X + matched.piece.Across <= fabric.UsableWidth)
                .GroupBy(matched => (matched.piece.Across, matched.piece.Along, Corner: matched.Corner!.Value))
        )
        {
            ColumnBound bound = Of(
                repeat,
                fabric.UsableWidth,
                same.Key.Across,
                same.Key.Along,
                same.Key.Corner,
                same.Sum(matched => matched.piece.Quantity)
            );
            longest = bound.Length > longest.Length ? bound : longest;
        }

        return longest;
    }

    /// <summary>The figures of the bound, without units: "4 pieces, 1 beside each other, 2 repeats apart".</summary>
    /// <param name="repeat">The repeat that the bound was found for.</param>
    public string Figures(RepeatSpecification repeat)
    {
        string apart =
            repeat.Length is not { } length ? "end to end"
            : Pitch.Nanometres % length.Nanometres == 0 ? $"{Pitch.Nanometres / length.Nanometres} repeats apart"
            : $"{Up(Pitch, repeat.DropLength)} half repeats apart";
        return string.Create(CultureInfo.InvariantCulture, $"{Count} pieces, {Beside} beside each other, {apart}");
    }

    private static ColumnBound Of(RepeatSpecification repeat, Length usable, Length across, Length along, Point corner, int count)
    {
        long beside,
            overlapping = 1;
        if (repeat.Width is { } width)
        {
            long columns = ((usable - across - corner.X).Nanometres / width.Nanometres) + 1;
            // A piece wider than a column covers several: in all columns that it reaches over, nothing else lies beside it.
            overlapping = Up(across, width);
            beside = (columns + overlapping - 1) / overlapping;
        }
        else
        {
            beside = usable.Nanometres / across.Nanometres;
        }

        Length pitch =
            repeat.Length is not { } length ? along
            : repeat.DropLength > Length.Zero && overlapping > 1 ? Up(along, repeat.DropLength) * repeat.DropLength
            : Up(along, length) * length;
        // On a drop the first piece may lie in a column that begins earlier.
        Length before = repeat.MotifY is null || repeat.DropLength > Length.Zero ? Length.Zero : corner.Y;
        return new ColumnBound(before + (((count + beside - 1) / beside) - 1) * pitch + along, count, beside, pitch);
    }

    private static long Up(Length length, Length step) => (length.Nanometres + step.Nanometres - 1) / step.Nanometres;
}
