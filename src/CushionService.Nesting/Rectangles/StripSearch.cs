using CushionService.Nesting.Rectangles.Beams;
using CushionService.Nesting.Rectangles.PerfectBoxes;
using CushionService.Nesting.Rectangles.Proofs;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles;

/// <summary>Closes the gap between a layout and a bound, from both ends, until they are sold as the same length or the
/// steps are spent: passes, relaxations, then in turns the box at the bound where it is nearly full, local search, beams,
/// and exact search on the rung below.</summary>
internal sealed class StripSearch
{
    // Of all steps, one in this many goes to lengths between those that can be bought; nothing does where that is fewer than that many to a
    // copy, as at quick: they would find little, and take longer than the length to buy has.
    private const int LeftOverPart = 16;
    private const long LeastToACopy = 5_000;

    private readonly RectangleSet _set;
    private readonly SaleLadder _sale;
    private readonly ProvenBound _bound;
    private readonly StepBudget _budget;
    private readonly SequenceSearch _layouts;
    private readonly bool _turns;

    // Of a round's steps, the part that goes to ruling out the next shorter length.
    private readonly double _proving;

    // Made when a round first needs them.
    private BoxBeams? _beams;
    private PerfectBoxRestarts? _perfect;

    private StripSearch(RectangleSet set, SaleLadder sale, ProvenBound bound, StepBudget budget)
    {
        (_set, _sale, _bound, _budget) = (set, sale, bound, budget);
        _layouts = SkylineSearch.Start(set, sale, budget);
        _turns = set.MayTurn;
        _proving = SearchShares.ForProof(set);
    }

    private bool IsAtGoal => _layouts.Length <= _bound.Goal;

    // The greatest length of the rung below the one that the layout is sold at: to rule it out is to prove the layout.
    private long Below => _sale.Reach(_sale.RungFor(_layouts.Length) - 1);

    /// <summary>Searches until the layout is sold as the bound is, or the steps are spent.</summary>
    /// <param name="set">All copies.</param>
    /// <param name="sale">The lengths that can be bought.</param>
    /// <param name="bound">A length that no layout can beat; raised here.</param>
    /// <param name="budget">Pays for the steps.</param>
    /// <returns>Holds the best layout.</returns>
    public static SequenceSearch Run(RectangleSet set, SaleLadder sale, ProvenBound bound, StepBudget budget)
    {
        var search = new StripSearch(set, sale, bound, budget);
        search.Run();
        return search._layouts;
    }

    private void Run()
    {
        _layouts.Start(_bound.Goal);
        // Rounds of growing shares: what is soon found or ruled out costs little, and no part waits for another to end.
        long share = Math.Max(_budget.Limit / 64, 1);
        while (!IsAtGoal && !_budget.Exhausted)
        {
            long before = _budget.Spent;
            // A round never asks for more than what is left, so that the last one is cut short rather than left out.
            Round(Math.Min(share, _budget.Limit - before));
            if (_budget.Spent == before && share >= _budget.Limit / 4)
            {
                // No search has anything left to try.
                break;
            }

            share = Math.Min(share, _budget.Limit / 4) * 4;
        }

        // What is sold as short as can be may still be laid shorter, for the sake of what is left over.
        if (IsAtGoal && _budget.Limit / LeftOverPart >= LeastToACopy * _set.Copies)
        {
            _layouts.Shorten(_bound.Length, Math.Min(_budget.Limit / LeftOverPart, _budget.Limit - _budget.Spent));
        }
    }

    // Each search in turn, until the layout is at the goal: a layout there ends them, since nothing shorter is sold.
    private void Round(long steps)
    {
        long before = _budget.Spent;
        _bound.Relax(Below);
        if (IsAtGoal || FillsBox(steps))
        {
            return;
        }

        steps = Math.Max(0, steps - (_budget.Spent - before));
        Improve(_bound.Box is null ? steps : (long)(steps * (1 - _proving)));
        if (IsAtGoal)
        {
            return;
        }

        _bound.Relax(Below);
        if (!IsAtGoal && _bound.Decide(Below, (long)(steps * _proving)))
        {
            _layouts.Adopt(_bound.Box!.Layout);
        }
    }

    private bool FillsBox(long steps)
    {
        double full = SearchShares.ForFullBox(_set, _turns, _budget.Limit);
        _perfect ??= full > 0 ? new PerfectBoxRestarts(_set, _budget) : null;
        if (_perfect?.IsWorthwhile(_bound.Goal) != true || !_perfect.Run(_bound.Goal, (long)(steps * full)))
        {
            return false;
        }

        _layouts.Adopt(_perfect.Layout);
        return true;
    }

    private void Improve(long steps)
    {
        _beams ??= new BoxBeams(_set, _sale, _budget);
        long end = _budget.Spent + steps;
        _layouts.Improve(_bound.Goal, _beams.Apply ? steps / SearchShares.LocalPart(_set, _turns, _budget.Limit) : steps);
        while (!IsAtGoal && _budget.Spent < end && _beams.Improve(_layouts.Length, _bound.Goal, end - _budget.Spent))
        {
            _layouts.Adopt(_beams.Layout);
        }
    }
}
