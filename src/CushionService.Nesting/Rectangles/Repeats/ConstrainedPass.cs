using System.Diagnostics;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Repeats;

/// <summary>Lays copies one by one where a repeat or flaws forbid most positions: each at the lowest, then leftmost, position that
/// its phase allows, beside or above what is there. Everything that forbids a position, a copy or a flaw, is
/// one list of taken rectangles.</summary>
internal sealed class ConstrainedPass
{
    private readonly StripProblem _problem;
    private readonly RectangleSet _set;
    private readonly LatticePhase[] _phase;
    private readonly long[] _left;
    private readonly long[] _right;
    private readonly long[] _lower;
    private readonly long[] _upper;
    private readonly int _flaws;
    private int _taken;

    public ConstrainedPass(StripProblem problem, RectangleSet set)
    {
        (_problem, _set) = (problem, set);
        _flaws = problem.Flaws.IsDefault ? 0 : problem.Flaws.Length;
        int most = set.Copies + _flaws;
        (_left, _right, _lower, _upper) = (new long[most], new long[most], new long[most], new long[most]);
        Layout = new RectangleLayout(set);
        _phase = new LatticePhase[set.Copies];
        for (var copy = 0; copy < set.Copies; copy++)
        {
            _phase[copy] = new LatticePhase(problem.Repeat, problem.Pieces[set.PieceOf(copy)].Alignment);
        }

        for (; _taken < _flaws; _taken++)
        {
            var flaw = problem.Flaws[_taken];
            (_left[_taken], _right[_taken]) = (flaw.X, flaw.X + flaw.Width);
            (_lower[_taken], _upper[_taken]) = (flaw.Y, flaw.Y + flaw.Length);
        }
    }

    /// <summary>Where the copies lie after a pass.</summary>
    public RectangleLayout Layout { get; }

    /// <summary>Lays all copies in the order given; gives up when one ends above <paramref name="limit"/>. With
    /// <paramref name="roundUp"/> each aligned copy takes whole repeats, as the rule of thumb has it.</summary>
    /// <returns>The length used, or <see cref="long.MaxValue"/>.</returns>
    public long Run(int[] order, long limit, bool roundUp, StepBudget budget)
    {
        _taken = _flaws;
        long length = 0;
        foreach (int copy in order)
        {
            int kind = _set.KindOf[copy];
            var (across, along) = (_set.Across[kind], _set.Along[kind]);
            var (takenAcross, takenAlong) = roundUp ? RoundedUp(copy, across, along) : (across, along);
            var (x, y) = Lowest(copy, across, takenAcross, takenAlong, limit - along, budget);
            var turned = false;
            if (_set.Turns[kind])
            {
                var (otherX, otherY) = Lowest(copy, along, along, across, limit - across, budget);
                turned = otherY < long.MaxValue && (y == long.MaxValue || otherY + across < y + along);
                (x, y) = turned ? (otherX, otherY) : (x, y);
            }

            if (y == long.MaxValue)
            {
                return y;
            }

            (takenAcross, takenAlong) = turned ? (along, across) : (takenAcross, takenAlong);
            Debug.Assert(IsFree(x, y, turned ? along : across, turned ? across : along), "A copy overlaps another one, or a flaw.");
            Debug.Assert(_phase[copy].NextX(x) == x && _phase[copy].NextY(x, y) == y, "A copy is off its phase.");
            Layout.Put(copy, x, y, turned);
            (_left[_taken], _right[_taken], _lower[_taken], _upper[_taken]) = (x, x + takenAcross, y, y + takenAlong);
            _taken++;
            length = Math.Max(length, y + (turned ? across : along));
        }

        return length;
    }

    /// <summary>Whether a rectangle shares area with none that is taken.</summary>
    private bool IsFree(long x, long y, long across, long along)
    {
        for (var other = 0; other < _taken; other++)
        {
            if (_left[other] < x + across && x < _right[other] && _lower[other] < y + along && y < _upper[other])
            {
                return false;
            }
        }

        return true;
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

    private (long X, long Y) Lowest(int copy, long across, long takenAcross, long takenAlong, long limit, StepBudget budget)
    {
        var best = (X: 0L, Y: long.MaxValue);
        var phase = _phase[copy];
        for (int other = -1; other < 2 * _taken; other++)
        {
            long from =
                other < 0 ? 0
                : other < _taken ? _right[other]
                : _left[other - _taken] - takenAcross;
            if (from < 0 && other >= 0)
            {
                continue;
            }

            long x = phase.NextX(from);
            if (x + across > _problem.Width)
            {
                continue;
            }

            long y = Drop(phase, x, takenAcross, takenAlong, Math.Min(limit, best.Y), budget);
            if (y < best.Y || (y == best.Y && x < best.X))
            {
                best = (x, y);
            }
        }

        return best;
    }

    /// <summary>The lowest free y at x, or <see cref="long.MaxValue"/> when it is above the limit.</summary>
    private long Drop(LatticePhase phase, long x, long across, long along, long limit, StepBudget budget)
    {
        long y = phase.NextY(x, 0);
        long end = x + across;
        for (var moved = true; moved; )
        {
            moved = false;
            budget.Spend(_taken + 1);
            for (var other = 0; other < _taken; other++)
            {
                if (_left[other] < end && x < _right[other] && _lower[other] < y + along && y < _upper[other])
                {
                    y = phase.NextY(x, _upper[other]);
                    moved = true;
                }
            }

            if (y > limit)
            {
                return long.MaxValue;
            }
        }

        return y;
    }
}
