using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>Beam searches for one shorter saleable length after the other, each with another guide, along the box and across it.
/// Many narrow beams that differ find more than a wide one in small orders, and less in large ones: they take turns.</summary>
internal sealed class BoxBeams
{
    // A wide beam; wider ones cost more steps than they save.
    private const int MostStates = 480;

    // A narrow beam, of which several that differ fit the same steps.
    private const int NarrowStates = 120;

    // With fewer a beam is a single greedy pass.
    private const int LeastStates = 12;

    // Rectangles of all partial layouts of all layers together, which are kept to be read back.
    private const int MostKept = 400_000;

    /// <summary>A layer of more copies costs more than the local search needs for as much, unless there are steps for many narrow beams.
    /// A beam of more ends with the steps.</summary>
    public const int MostCopies = 250;
    private const int BeamsOfMany = 16;
    private readonly RectangleSet _set;
    private readonly SaleLadder _sale;
    private readonly StepBudget _budget;

    // Made when the steps first suffice for one, and made wider when they suffice for more.
    private BeamSearch? _search;
    private Xorshift _random = new(1);
    private int _runs;

    // The part of the way to the goal that is aimed at: half, a quarter, down to one rung.
    private long _stride = 2;

    /// <summary>Beams for an order.</summary>
    /// <param name="set">All copies.</param>
    /// <param name="sale">The lengths that can be bought.</param>
    /// <param name="budget">Pays for the steps.</param>
    public BoxBeams(RectangleSet set, SaleLadder sale, StepBudget budget)
    {
        (_set, _sale, _budget) = (set, sale, budget);
        Layout = new RectangleLayout(set);
    }

    /// <summary>The layout that was found last.</summary>
    public RectangleLayout Layout { get; }

    /// <summary>Whether the order is small enough for beams, or the steps are many enough.</summary>
    public bool Apply =>
        _set.Copies <= MostCopies || (_set.Copies <= MostKept / LeastStates && _budget.Limit >= BeamsOfMany * LeastStates * StepsOfState);

    /// <summary>About the steps of one partial layout through all layers.</summary>
    private long StepsOfState => (long)_set.Copies * Math.Max(1, _set.Kinds / 2);

    /// <summary>Aims at a length between the goal and the present one for about as many steps as are given.</summary>
    /// <returns>Whether a shorter layout was found.</returns>
    /// <param name="length">The present length, grid units.</param>
    /// <param name="goal">A length that is good enough, below the present one.</param>
    /// <param name="steps">Steps to spend.</param>
    public bool Improve(long length, long goal, long steps)
    {
        long stop = _budget.Spent + steps;
        if (!Apply || !Widen(steps))
        {
            return false;
        }

        long rung = _sale.RungFor(length);
        while (_budget.Spent < stop)
        {
            long stride = Math.Max(1, (rung - _sale.RungFor(goal)) / _stride);
            int turn = _runs / 2;
            var guide = BeamGuide.InTurn[turn % BeamGuide.InTurn.Length];
            bool wide = turn / BeamGuide.InTurn.Length % 2 == 1;
            int abreast = wide ? _search!.States : Math.Min(_search!.States, NarrowStates);
            if (_search.Run(abreast, _sale.Reach(rung - stride), (_runs++ & 1) == 1, guide, ref _random, Layout))
            {
                return true;
            }

            _stride = stride > 1 ? _stride * 2 : 2;
        }

        return false;
    }

    /// <summary>Sizes the beam so that a few runs fit the steps; false when they are too few for any.</summary>
    /// <param name="steps">Steps of the call.</param>
    private bool Widen(long steps)
    {
        int states = (int)Math.Min(Math.Min(MostStates, MostKept / _set.Copies), steps / 2 / StepsOfState);
        if (states >= LeastStates && states > (_search?.States ?? 0))
        {
            _search = new BeamSearch(_set, states, _budget);
        }

        return _search is not null;
    }
}
