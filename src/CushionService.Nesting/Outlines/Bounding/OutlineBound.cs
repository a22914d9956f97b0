using CushionService.Nesting.Outlines.Placing;
using CushionService.Nesting.Rectangles.Proofs;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.Bounding;

/// <summary>A length that no layout can beat: the outlines' area over the width, the longest copy as it lies shortest, and what the
/// rectangles within the pieces need.</summary>
/// <param name="Length">In grid units.</param>
/// <param name="Kind">The argument.</param>
/// <param name="Figures">Its figures in one line.</param>
internal readonly record struct OutlineBound(long Length, ProofKind Kind, string Figures)
{
    /// <summary>The bound by area and by the longest copy.</summary>
    /// <param name="copies">The copies and their turns.</param>
    /// <returns>By area: rounded up, so that no layout is shorter by a fraction of a unit.</returns>
    public static OutlineBound Of(Copies copies)
    {
        Int128 doubleArea = 0;
        long longest = 0;
        for (var copy = 0; copy < copies.Count; copy++)
        {
            var turns = copies.TurnsOf(copy);
            doubleArea += copies.Book[turns[0].Shape].DoubleArea;
            var shortest = long.MaxValue;
            foreach (var (shape, _) in turns)
            {
                shortest = Math.Min(shortest, copies.Book[shape].Length);
            }

            longest = Math.Max(longest, shortest);
        }

        var byArea = (long)((doubleArea + 2 * copies.Width - 1) / (2 * copies.Width));
        return byArea >= longest
            ? new(byArea, ProofKind.Area, $"area {doubleArea / 2} / width {copies.Width} gives at least {byArea}")
            : new(longest, ProofKind.Area, $"one piece alone is {longest} long");
    }

    /// <summary>Rules out a length, if the rectangles within the pieces do: by dual feasible functions, by relaxations, or by a
    /// search through all their layouts.</summary>
    /// <param name="inner">Rectangles within the pieces, such as are never all there where the pieces do not fit; null for none.</param>
    /// <param name="sale">What can be bought.</param>
    /// <param name="length">The length to rule out, grid units.</param>
    /// <param name="searching">Steps for the search through layouts; 0 for none.</param>
    /// <param name="budget">Counts all steps.</param>
    /// <returns>The same bound when the length is not ruled out.</returns>
    public OutlineBound Raised(RectangleSet? inner, SaleLadder sale, long length, long searching, StepBudget budget)
    {
        if (inner is null || length < Length)
        {
            return this;
        }

        var bound = new ProvenBound(inner, sale, budget);
        bound.Relax(length);
        if (bound.Length <= length && searching > 0)
        {
            bound.Decide(length, searching);
        }

        return bound.Length > length ? new(bound.Length, bound.Kind, $"rectangles within the pieces: {bound.Figures}") : this;
    }
}
