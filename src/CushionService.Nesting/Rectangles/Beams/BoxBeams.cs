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
    private const int LeastStates = 10;

    // Rectangles of all partial layouts of all layers together, which are kept to be read back.
    private const int MostKept = 400_000;

    /// <summary>A layer of more copies costs more than the local search needs for as much, unless there are steps for many narrow beams.
    /// A beam of more ends with the steps.</summary>
    public const int MostCopies = 250;
    private const int BeamsOfMany = 16;

    // Steps for each copy, below which no beam looks ahead: there are none to spare for it.
    private const long LeastToLookAhead = 100_000;

    // About as many segments has a skyline on the way; one kind in this many is weighed on a gap.
    private const int SomeSegments = 8;
    private const int WeighedPart = 5;

    // What the sums of all copies take, beside those of one partial layout through all layers.
    private const long ToSizeSums = 8;

    // A box is tight where it has at most this share of the copies' area to lose. In others, what the copies left add up to tells
    // little, and looking at it misleads.
    private const double TightSlack = 0.03;
    private readonly RectangleSet _set;
    private readonly SaleLadder _sale;
    private readonly StepBudget _budget;
    private readonly BeamKinds _kinds;
    private readonly bool _looksAhead;

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
        _kinds = new BeamKinds(set);
        // With turns nearly every sum can be reached.
        _looksAhead =
            !_kinds.MayTurn
            && _kinds.Width <= BeamSums.MostSum
            && set.Copies <= MostCopies
            && budget.Limit >= LeastToLookAhead * set.Copies;
    }

    /// <summary>The layout that was found last.</summary>
    public RectangleLayout Layout { get; }

    /// <summary>Whether the order is small enough for beams, or the steps are many enough.</summary>
    public bool Apply =>
        _set.Copies <= MostCopies || (_set.Copies <= MostKept / LeastStates && _budget.Limit >= BeamsOfMany * LeastStates * StepsOfState);

    /// <summary>About the steps of one partial layout through all layers, without looking ahead.</summary>
    private long StepsOfState => (long)_set.Copies * (BeamSearch.StepsOfMaking(_set.Kinds, SomeSegments) + _set.Kinds / WeighedPart);

    /// <summary>Aims at a length between the goal and the present one for about as many steps as are given.</summary>
    /// <returns>Whether a shorter layout was found.</returns>
    /// <param name="length">The present length, grid units.</param>
    /// <param name="goal">A length that is good enough, below the present one.</param>
    /// <param name="steps">Steps to spend.</param>
    public bool Improve(long length, long goal, long steps)
    {
        long stop = _budget.Spent + steps;
        if (!Apply || !Widen(steps, length))
        {
            return false;
        }

        // In whole units the strip may be narrower than the goal's area reckons with. A box too small for the area ends a run before its
        // first step: aimed at again and again, the steps would never be spent.
        long rung = _sale.RungFor(length);
        long rungs = rung - _sale.RungFor(Math.Max(goal, _kinds.ShortestByArea));
        if (rungs <= 0)
        {
            return false;
        }

        while (_budget.Spent < stop)
        {
            long stride = Math.Max(1, rungs / _stride);
            int turn = _runs / 2;
            var guide = BeamGuide.InTurn[turn % BeamGuide.InTurn.Length];
            bool wide = turn / BeamGuide.InTurn.Length % 2 == 1;
            int abreast = wide ? _search!.States : Math.Min(_search!.States, NarrowStates);
            long box = _sale.Reach(rung - stride);
            if (_search.Run(abreast, box, (_runs++ & 1) == 1, LooksAhead(length, box), guide, ref _random, Layout))
            {
                return true;
            }

            _stride = stride > 1 ? _stride * 2 : 2;
        }

        return false;
    }

    /// <summary>Whether a run looks ahead: all of them once the present layout is tight, and every other one before. Orders that leave
    /// waste anyway never come so far, and keep their ordinary beams.</summary>
    /// <param name="length">The present length, grid units.</param>
    /// <param name="box">The length that is aimed at.</param>
    private bool LooksAhead(long length, long box) => _looksAhead && IsTight(box) && (IsTight(length) || _random.Next(2) == 0);

    /// <summary>Whether a length leaves little area to lose.</summary>
    private bool IsTight(long length) => (double)length * _set.Width <= (1 + TightSlack) * _set.Area;

    /// <summary>Sizes the beam so that a few runs fit the steps; false when they are too few for any.</summary>
    /// <param name="steps">Steps of the call.</param>
    /// <param name="length">A length that no box is longer than, grid units.</param>
    private bool Widen(long steps, long length)
    {
        long ahead = _looksAhead ? (long)_set.Copies * BeamSums.StepsFor(_kinds, length / _kinds.UnitY) : 0;
        int states = (int)Math.Min(Math.Min(MostStates, MostKept / _set.Copies), steps / 2 / (StepsOfState + ahead));
        if (states >= LeastStates && states > (_search?.States ?? 0))
        {
            _budget.Spend(ToSizeSums * ahead);
            _search = new BeamSearch(_kinds, states, _looksAhead ? length : null, _budget);
        }

        return _search is not null;
    }
}
