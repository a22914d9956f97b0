using CushionService.Engine.Measures;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Engine.Layouts;

/// <summary>The best layout so far for a span of positions of the motif.</summary>
/// <param name="span">The span.</param>
/// <param name="problem">Its problem.</param>
/// <param name="goal">The lengths that are as good as each other.</param>
internal sealed class SpanTrial(MotifSpan span, SpanProblem problem, SaleGoal goal)
{
    /// <summary>The span.</summary>
    public MotifSpan Span => span;

    /// <summary>Its problem.</summary>
    public SpanProblem Problem => problem;

    // Null before the first search.
    private StripLayout? Best { get; set; }

    // Where the best layout starts, in grid units.
    private long Start { get; set; }

    /// <summary>How far from the start of the layout a row of motifs is, less than a repeat, where the layout may start
    /// anywhere.</summary>
    public Length MotifStart => problem.Grid.Back(problem.MotifAfter(Start));

    /// <summary>Length of the layout, with what lies before it.</summary>
    public Length Length => problem.Grid.Back(Best!.Length + problem.Before(Start));

    /// <summary>Every copy of every piece, once.</summary>
    public IEnumerable<LaidPiece> Placements => Best!.Placements.Select(placed => problem.Laid(placed, problem.Before(Start)));

    /// <summary>A length that no layout can beat that starts with the cut, on a fabric as wide as the span leaves.</summary>
    public FreeBound Bound { get; private set; }

    /// <summary>Search steps spent.</summary>
    public long Steps { get; private set; }

    /// <summary>Whether it was searched for again.</summary>
    public bool IsRefined { get; private set; }

    /// <summary>Searches from every start, outlines as the boxes around them.</summary>
    /// <param name="starts">How many starts are tried at most.</param>
    /// <param name="effort">How hard each is searched.</param>
    /// <param name="sharedBy">How many searches share the effort's steps.</param>
    /// <param name="cancellation">Cancels the search.</param>
    public void Begin(int starts, Effort effort, int sharedBy, CancellationToken cancellation)
    {
        foreach (long start in problem.Starts.AsSpan()[..Math.Min(starts, problem.Starts.Length)])
        {
            Search(start, boxes: true, effort, sharedBy, cancellation);
        }
    }

    /// <summary>Searches again from the best start; whether that is sold shorter.</summary>
    /// <param name="effort">How hard to search, with outlines as they are.</param>
    /// <param name="sharedBy">How many searches share the effort's steps.</param>
    /// <param name="cancellation">Cancels the search.</param>
    /// <returns>False also where a shorter layout was found that is sold as the same length.</returns>
    public bool Refine(Effort effort, int sharedBy, CancellationToken cancellation)
    {
        long before = goal.Rung(Length);
        IsRefined = true;
        Search(Start, boxes: false, effort, sharedBy, cancellation);
        return goal.Rung(Length) < before;
    }

    // The best layout is the shortest together with what lies before its start; of equals the first stays.
    private void Search(long start, bool boxes, Effort effort, int sharedBy, CancellationToken cancellation)
    {
        StripLayout layout = Nester.Nest(problem.At(goal, start, boxes), effort, sharedBy, cancellation);
        Steps += layout.Steps;
        // A bound holds for the start that it was found for, and what bounds the boxes does not bound the outlines in them.
        if (start == 0 && !(boxes && problem.HasOutlines) && problem.Grid.Back(layout.LowerBound) >= Bound.Length)
        {
            Bound = FreeBound.Of(layout, problem.Grid);
        }

        if (Best is null || problem.Before(start) + layout.Length < problem.Before(Start) + Best.Length)
        {
            (Best, Start) = (layout, start);
        }
    }
}
