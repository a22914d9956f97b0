using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Repeats;

/// <summary>Begins a search where a repeat or flaws forbid most positions. It starts from the trade's rule of thumb (round every aligned
/// cut up to whole repeats), so that its answer is never longer.</summary>
internal static class RepeatSearch
{
    // Two passes, which a search makes at least, look at each hole seven times for each copy, four holes a step.
    private const int StepsPerHole = 2;

    // A search of this many steps is always made; and the holes that a layout of many copies keeps at least.
    private const long AlwaysMade = 550_000;
    private const int LeastClosed = 32;

    /// <summary>A search that holds the best of the rule of thumb and of the first passes.</summary>
    /// <param name="problem">The strip, its repeat and its flaws.</param>
    /// <param name="set">The problem's copies.</param>
    /// <param name="goal">A layout up to this length is good enough.</param>
    /// <param name="budget">Pays for the steps; one pass is made whatever it holds.</param>
    /// <exception cref="ArgumentException">A piece fits the strip on no phase of the repeat.</exception>
    /// <returns>Its layout is at most as long as the rule of thumb's.</returns>
    public static SequenceSearch Start(StripProblem problem, RectangleSet set, long goal, StepBudget budget)
    {
        var pass = new RepeatPass(problem, set, Closed(set.Copies, budget.Limit));
        int[] copies = [.. Enumerable.Range(0, set.Copies)];
        // Copies of one size may be aligned to different phases: only copies of one piece are exchanged
        // in vain.
        int[] same = Array.ConvertAll(copies, set.PieceOf);
        bool[] aligned = Array.ConvertAll(copies, copy => problem.Pieces[set.PieceOf(copy)].Alignment is not null);
        if (pass.RuleOfThumb(ByArea(set, aligned), budget) == long.MaxValue)
        {
            throw new ArgumentException("A piece fits the strip on no phase of the repeat.", nameof(problem));
        }

        var search = new SequenceSearch(set, copies, same, pass, problem.Sale, budget);
        search.Adopt(pass.Layout);
        search.Start(goal, aligned);
        return search;
    }

    /// <summary>How many holes a layout keeps, so that its passes take no more than the steps.</summary>
    private static int Closed(int copies, long steps) =>
        (int)Math.Clamp(Math.Max(steps, AlwaysMade) / ((long)StepsPerHole * copies), LeastClosed, FreeSpace.MostClosed);

    /// <summary>The length of the rule of thumb, in grid units.</summary>
    /// <param name="problem">The strip, its repeat and its flaws.</param>
    /// <param name="set">The problem's copies.</param>
    /// <returns><see cref="long.MaxValue"/> when a piece fits the strip on no phase.</returns>
    public static long RuleOfThumb(StripProblem problem, RectangleSet set)
    {
        bool[] aligned = [.. Enumerable.Range(0, set.Copies).Select(copy => problem.Pieces[set.PieceOf(copy)].Alignment is not null)];
        return new RepeatPass(problem, set).RuleOfThumb(ByArea(set, aligned), new StepBudget(0, CancellationToken.None));
    }

    /// <summary>Aligned copies first, and of each sort the largest first.</summary>
    private static int[] ByArea(RectangleSet set, bool[] aligned) =>
        [
            .. Enumerable
                .Range(0, set.Copies)
                .OrderByDescending(copy => aligned[copy])
                .ThenByDescending(copy => set.Across[set.KindOf[copy]] * set.Along[set.KindOf[copy]]),
        ];
}
