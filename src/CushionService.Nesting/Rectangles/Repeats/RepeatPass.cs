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
    private readonly LatticePhase[] _phase;
    private readonly FreeSpace _space;
    private readonly long[] _leastAcross;
    private readonly long[] _leastAlong;

    /// <summary>Sizes everything once.</summary>
    /// <param name="problem">The strip, its repeat and its flaws.</param>
    /// <param name="set">The problem's copies.</param>
    public RepeatPass(StripProblem problem, RectangleSet set)
    {
        (_problem, _set) = (problem, set);
        Layout = new RectangleLayout(set);
        _space = new FreeSpace(problem.Width);
        (_leastAcross, _leastAlong) = (new long[set.Copies + 1], new long[set.Copies + 1]);
        _phase = new LatticePhase[set.Copies];
        for (var copy = 0; copy < set.Copies; copy++)
        {
            _phase[copy] = new LatticePhase(problem.Repeat, problem.Pieces[set.PieceOf(copy)].Alignment);
        }
    }

    /// <inheritdoc/>
    public RectangleLayout Layout { get; }

    /// <inheritdoc/>
    public long Length { get; private set; }

    /// <summary>Lays all copies so that each aligned one takes whole repeats, as the trade's rule of thumb has it.</summary>
    /// <returns>The length used; <see cref="long.MaxValue"/> when a copy finds no place at all.</returns>
    public long RuleOfThumb(int[] order, StepBudget budget) =>
        Lay(order, Skyline.Wall, 0, wholeRepeats: true, budget) == 0 ? Length : long.MaxValue;

    /// <inheritdoc/>
    public long Lay(int[] order, long limit, long most, StepBudget budget) => Lay(order, limit, most, wholeRepeats: false, budget);

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
            var taken = wholeRepeats ? RoundedUp(copy, across, along) : (Across: across, Along: along);
            var (x, y) = Lowest(copy, across, taken.Across, taken.Along, limit - along, budget);
            var turned = false;
            if (_set.Turns[kind])
            {
                var other = Lowest(copy, along, along, across, limit - across, budget);
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
            Debug.Assert(_phase[copy].NextX(x) == x && _phase[copy].NextY(x, y) == y, "A copy is off its phase.");
            Debug.Assert(x >= 0 && x + across <= _problem.Width && y + along <= limit, "A copy lies outside the strip.");
            Layout.Put(copy, x, y, turned);
            Length = Math.Max(Length, y + along);
            _space.Take(new FreeRectangle(x, y, x + taken.Across, y + taken.Along), _leastAcross[at + 1], _leastAlong[at + 1], budget);
        }

        return outside;
    }

    /// <summary>Empties the strip but for its flaws, and notes the least extents of what is still to come at each place of the
    /// order.</summary>
    private void Begin(int[] order, StepBudget budget)
    {
        (_leastAcross[order.Length], _leastAlong[order.Length]) = (long.MaxValue, long.MaxValue);
        for (int at = order.Length - 1; at >= 0; at--)
        {
            int kind = _set.KindOf[order[at]];
            var (across, along) = (_set.Across[kind], _set.Along[kind]);
            long least = Math.Min(across, along);
            _leastAcross[at] = Math.Min(_leastAcross[at + 1], _set.Turns[kind] ? least : across);
            _leastAlong[at] = Math.Min(_leastAlong[at + 1], _set.Turns[kind] ? least : along);
        }

        budget.Spend(order.Length);
        _space.Clear();
        foreach (var flaw in _problem.Flaws.IsDefault ? [] : _problem.Flaws.AsSpan())
        {
            var taken = new FreeRectangle(flaw.X, flaw.Y, flaw.X + flaw.Width, flaw.Y + flaw.Length);
            _space.Take(taken, _leastAcross[0], _leastAlong[0], budget);
        }
    }

    private (long Across, long Along) RoundedUp(int copy, long across, long along)
    {
        if (_problem.Pieces[_set.PieceOf(copy)].Alignment is null)
        {
            return (across, along);
        }

        var lattice = _problem.Repeat!;
        long whole = Math.Max(1, lattice.Width);
        return ((across + whole - 1) / whole * whole, (along + lattice.Length - 1) / lattice.Length * lattice.Length);
    }

    /// <summary>The lowest position of a copy, the leftmost of equals; a y of <see cref="long.MaxValue"/> when there is none up to the
    /// limit. Of a copy that takes more than it is wide, the surplus may stick out of the strip.</summary>
    private (long X, long Y) Lowest(int copy, long across, long takenAcross, long takenAlong, long limit, StepBudget budget)
    {
        var best = (X: 0L, Y: limit >= Skyline.Wall ? long.MaxValue : limit + 1);
        long none = best.Y;
        ref readonly var phase = ref _phase[copy];
        long looks = 1;
        foreach (ref readonly var free in _space.All)
        {
            long room = free.Right == _problem.Width ? across : takenAcross;
            if (free.Lower > best.Y || free.Right - free.Left < room || free.Upper - free.Lower < takenAlong)
            {
                continue;
            }

            // Columns a period apart allow the same heights, so that the first of each will do.
            long x = phase.NextX(free.Left);
            for (var column = 0; column < phase.Period && x + room <= free.Right; column++, x += phase.StepX)
            {
                looks++;
                long y = phase.NextY(x, free.Lower);
                if (y + takenAlong <= free.Upper && (y < best.Y || (y == best.Y && x < best.X)))
                {
                    best = (x, y);
                }
            }
        }

        budget.Spend(looks + _space.All.Length);
        return best.Y == none ? (0, long.MaxValue) : best;
    }
}
