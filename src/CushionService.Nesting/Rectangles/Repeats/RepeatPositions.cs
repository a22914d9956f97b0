using System.Diagnostics;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Repeats;

/// <summary>Finds where a copy may lie in the free part of a strip: on its phase of the repeat, or anywhere when it is not
/// aligned.</summary>
/// <remarks>A copy whose lowest position lies within a maximal empty rectangle lies there at the lowest point of its lattice, so that one
/// look at each rectangle and each column of the lattice is enough.</remarks>
internal sealed class RepeatPositions
{
    private readonly StripProblem _problem;
    private readonly RectangleSet _set;
    private readonly FreeSpace _space;
    private readonly LatticePhase[] _phase;

    /// <summary>Sizes everything once.</summary>
    /// <param name="problem">The strip and its repeat.</param>
    /// <param name="set">The problem's copies.</param>
    /// <param name="space">The free part of the strip, which the pass changes.</param>
    public RepeatPositions(StripProblem problem, RectangleSet set, FreeSpace space)
    {
        (_problem, _set, _space) = (problem, set, space);
        _phase = new LatticePhase[set.Copies];
        for (var copy = 0; copy < set.Copies; copy++)
        {
            _phase[copy] = new LatticePhase(problem.Repeat, problem.Pieces[set.PieceOf(copy)].Alignment);
        }
    }

    /// <summary>The extents that a copy takes by the rule of thumb: an aligned one takes whole repeats.</summary>
    /// <param name="copy">Index into the set's copies.</param>
    /// <param name="across">Its extent across the strip, in grid units.</param>
    /// <param name="along">Its extent along the strip, in grid units.</param>
    /// <returns>At least the extents given; the same for a copy that is not aligned.</returns>
    public (long Across, long Along) RoundedUp(int copy, long across, long along)
    {
        if (_problem.Pieces[_set.PieceOf(copy)].Alignment is null)
        {
            return (across, along);
        }

        var lattice = _problem.Repeat!;
        long whole = Math.Max(1, lattice.Width);
        return ((across + whole - 1) / whole * whole, (along + lattice.Length - 1) / lattice.Length * lattice.Length);
    }

    /// <summary>The lowest position of a copy, the leftmost of equals. Of a copy that takes more than it is wide, the surplus may stick
    /// out of the strip.</summary>
    /// <param name="copy">Index into the set's copies.</param>
    /// <param name="across">Its extent across the strip as it is to lie, in grid units.</param>
    /// <param name="takenAcross">What it takes across, at least <paramref name="across"/>.</param>
    /// <param name="takenAlong">What it takes along the strip.</param>
    /// <param name="limit">The highest lower edge that is allowed.</param>
    /// <param name="budget">Pays a step for each four free rectangles, and for each column, that are looked at.</param>
    /// <returns>Its lower left corner; a y of <see cref="long.MaxValue"/> when there is none up to the limit.</returns>
    public (long X, long Y) Lowest(int copy, long across, long takenAcross, long takenAlong, long limit, StepBudget budget)
    {
        var best = (X: 0L, Y: limit >= Skyline.Wall ? long.MaxValue : limit + 1);
        long none = best.Y;
        ref readonly var phase = ref _phase[copy];
        long looks = 1;
        FreeList all = _space.All;
        for (int at = all.NextRoom(0, across, takenAlong, best.Y); at >= 0; at = all.NextRoom(at + 1, across, takenAlong, best.Y))
        {
            FreeRectangle free = all[at];
            long room = free.Right == _problem.Width ? across : takenAcross;
            long x = phase.NextX(free.Left);
            if (x + room > free.Right)
            {
                continue;
            }

            // Columns a period apart allow the same heights, so that the first of each will do.
            long columns = phase.Period == 1 ? 1 : Math.Min(phase.Period, (free.Right - room - x) / phase.StepX + 1);
            long rise = phase.RiseTo(x, free.Lower);
            looks += columns;
            for (long column = 0; column < columns; column++, x += phase.StepX, rise = phase.NextRise(rise))
            {
                long y = free.Lower + rise;
                if (y + takenAlong <= free.Upper && (y < best.Y || (y == best.Y && x < best.X)))
                {
                    best = (x, y);
                }
            }
        }

        budget.Spend(looks + all.Steps);
        return best.Y == none ? (0, long.MaxValue) : best;
    }

    /// <summary>Fails a debug build when a copy is put where its phase does not allow it.</summary>
    [Conditional("DEBUG")]
    public void AssertOnPhase(int copy, long x, long y) =>
        Debug.Assert(_phase[copy].NextX(x) == x && _phase[copy].RiseTo(x, y) == 0, "A copy is off its phase.");
}
