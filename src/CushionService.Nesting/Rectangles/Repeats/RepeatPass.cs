using System.Diagnostics;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Repeats;

/// <summary>Lays copies one by one where a repeat or flaws forbid most positions: each at the lowest, then leftmost, position that its
/// phase allows.</summary>
internal sealed class RepeatPass : ISequencePass
{
    private readonly StripProblem _problem;
    private readonly RectangleSet _set;

    // What is free is a set of greatest rectangles that may overlap, and no skyline: a flaw, or a copy that waits for its
    // phase, leaves room below itself that a later copy may still use.
    private readonly FreeSpace _space;
    private readonly RepeatPositions _positions;
    private readonly LeastAhead _least;

    /// <summary>Sizes everything once.</summary>
    /// <param name="problem">The strip, its repeat and its flaws.</param>
    /// <param name="set">The problem's copies.</param>
    /// <param name="mostClosed">How many holes of the layout are kept at most.</param>
    public RepeatPass(StripProblem problem, RectangleSet set, int mostClosed = FreeSpace.MostClosed)
    {
        (_problem, _set) = (problem, set);
        Layout = new RectangleLayout(set);
        _space = new FreeSpace(problem.Width, mostClosed);
        _positions = new RepeatPositions(problem, set, _space);
        _least = new LeastAhead(set);
    }

    /// <inheritdoc/>
    public RectangleLayout Layout { get; }

    /// <inheritdoc/>
    public long Length { get; private set; }

    /// <summary>Lays all copies so that each aligned one takes whole repeats, as the trade's rule of thumb has it.</summary>
    /// <param name="order">The copies, the first to be laid in front.</param>
    /// <param name="budget">Pays for the steps.</param>
    /// <returns>The length used; <see cref="long.MaxValue"/> when a copy finds no place at all.</returns>
    public long RuleOfThumb(int[] order, StepBudget budget) =>
        Lay(order, Skyline.Wall, 0, wholeRepeats: true, budget) == 0 ? Length : long.MaxValue;

    /// <inheritdoc/>
    public long Lay(int[] order, long limit, long most, StepBudget budget) => Lay(order, limit, most, wholeRepeats: false, budget);

    /// <summary>As <see cref="Lay(int[], long, long, StepBudget)"/>; with whole repeats, every aligned copy also takes what it
    /// is short of them.</summary>
    /// <param name="order">The copies, the first to be laid in front.</param>
    /// <param name="limit">No copy may end beyond it.</param>
    /// <param name="most">The greatest area that may stay outside; at more the pass stops.</param>
    /// <param name="wholeRepeats">Whether what an aligned copy takes is rounded up to whole repeats.</param>
    /// <param name="budget">Pays for the steps.</param>
    /// <returns>The area that found no place; <see cref="long.MaxValue"/> when that is more.</returns>
    private long Lay(int[] order, long limit, long most, bool wholeRepeats, StepBudget budget)
    {
        Begin(order, budget);
        Length = 0;
        long outside = 0;
        for (var at = 0; at < order.Length; at++)
        {
            int copy = order[at];
            int kind = _set.KindOf[copy];
            var (across, along) = (_set.Across[kind], _set.Along[kind]);
            var taken = wholeRepeats ? _positions.RoundedUp(copy, across, along) : (Across: across, Along: along);
            var (x, y) = _positions.Lowest(copy, across, taken.Across, taken.Along, limit - along, budget);
            var turned = false;
            if (_set.Turns[kind])
            {
                // Turned when it then ends lower; of equals it stays as it is.
                var other = _positions.Lowest(copy, along, along, across, limit - across, budget);
                turned = other.Y < long.MaxValue && (y == long.MaxValue || other.Y + across < y + along);
                (x, y) = turned ? other : (x, y);
            }

            if (y == long.MaxValue)
            {
                outside += across * along;
                if (outside > most)
                {
                    return long.MaxValue;
                }

                continue;
            }

            (across, along) = turned ? (along, across) : (across, along);
            taken = turned ? (across, along) : taken;
            _positions.AssertOnPhase(copy, x, y);
            Debug.Assert(x >= 0 && x + across <= _problem.Width && y + along <= limit, "A copy lies outside the strip.");
            Layout.Put(copy, x, y, turned);
            Length = Math.Max(Length, y + along);
            // Free rectangles that none of the copies ahead fits are dropped at once, so that the list stays short.
            var (leastAcross, leastAlong) = _least.From(at + 1);
            _space.Take(new FreeRectangle(x, y, x + taken.Across, y + taken.Along), leastAcross, leastAlong, budget);
        }

        return outside;
    }

    /// <summary>Empties the strip but for its flaws, and notes the least extents of what is to come.</summary>
    /// <param name="order">The copies of this pass.</param>
    /// <param name="budget">Pays a step for each copy, and for the flaws.</param>
    private void Begin(int[] order, StepBudget budget)
    {
        _least.Read(order);
        budget.Spend(order.Length);
        _space.Clear();
        var (leastAcross, leastAlong) = _least.From(0);
        foreach (var flaw in _problem.Flaws.IsDefault ? [] : _problem.Flaws.AsSpan())
        {
            var taken = new FreeRectangle(flaw.X, flaw.Y, flaw.X + flaw.Width, flaw.Y + flaw.Length);
            _space.Take(taken, leastAcross, leastAlong, budget);
        }
    }
}
