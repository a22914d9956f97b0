using CushionService.Nesting.Outlines.Placing;
using CushionService.Nesting.Rectangles.Proofs;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.Bounding;

/// <summary>A length that no layout can beat: the outlines' area over the width, the longest copy as it lies shortest, and what the rectangles within
/// the pieces need.</summary>
internal readonly record struct OutlineBound(long Length, ProofKind Kind, string Figures)
{
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

    /// <summary>Rules out a length, if the rectangles within the pieces do.</summary>
    public OutlineBound Raised(RectangleSet? inner, long length, StepBudget budget) =>
        inner is not null && length >= Length && new DualFeasible(inner).RulesOut(length, budget) is { } figures
            ? new(length + 1, ProofKind.DualFeasible, $"rectangles within the pieces: {figures}")
            : this;
}
