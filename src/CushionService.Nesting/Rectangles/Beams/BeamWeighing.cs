using System.Diagnostics;
using System.Numerics;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>Weighs what could be laid next on partial layouts: how good each rectangle looks on a state's gap, by a guide.
/// The best few of each state become candidates of the whole layer.</summary>
internal sealed class BeamWeighing
{
    private readonly BeamKinds _kinds;
    private readonly RectangleSet _set;
    private readonly StepBudget _budget;

    // What counts against each kind in this run, whatever it is laid on: its liking, less what it takes away from the burden of what is
    // left.
    private readonly double[] _against;
    private readonly BestMoves _best = new();
    private BeamWays _ways;
    private long _height;
    private long _slack;

    // What counts for each segment, for each unit of an upright edge, and for each unit of area that is lost.
    private double _forSegment;
    private double _forEdge;
    private double _forWaste;

    /// <summary>Sizes everything once.</summary>
    /// <param name="kinds">All copies.</param>
    /// <param name="states">The most states of a layer.</param>
    /// <param name="budget">Pays a step for each rectangle that is weighed.</param>
    public BeamWeighing(BeamKinds kinds, int states, StepBudget budget)
    {
        (_kinds, _set, _budget) = (kinds, kinds.Set, budget);
        _against = new double[_set.Kinds];
        Candidates = new BeamCandidates(states * BestMoves.Most);
        _ways = kinds.Ways(sideways: false);
    }

    /// <summary>What was found on the states of a layer.</summary>
    public BeamCandidates Candidates { get; }

    /// <summary>Prepares a run.</summary>
    /// <param name="sideways">Whether the box's axes are exchanged.</param>
    /// <param name="height">Height of the box as the run sees it.</param>
    /// <param name="slack">Area that may be lost.</param>
    /// <param name="looksAhead">Whether the run counts what the copies left add up to.</param>
    /// <param name="guide">What looks good.</param>
    /// <param name="random">Gives each kind its liking for this run.</param>
    public void Begin(bool sideways, long height, long slack, bool looksAhead, BeamGuide guide, ref Xorshift random)
    {
        (_height, _slack) = (height, slack);
        _ways = _kinds.Ways(sideways);
        // Units along the two axes may differ; the sides of a square do not. Lengths are divided by the mean side and areas by the mean
        // area, so that weights suit pieces of any size.
        double meanSide = Math.Sqrt((double)_set.Area / _set.Copies) / (sideways ? _kinds.UnitX : _kinds.UnitY);
        (_forSegment, _forEdge) = (guide.Segments, guide.Steps / meanSide);
        _forWaste = (looksAhead ? BeamGuide.WasteInTight : BeamGuide.Waste) / _kinds.MeanArea;
        for (var kind = 0; kind < _set.Kinds; kind++)
        {
            double liking = guide.Noise * (random.Next(1 << 20) / (double)(1 << 20) - 0.5);
            _against[kind] = liking - BeamGuide.Remaining * (looksAhead ? _kinds.Hardness[kind] : AreaOf(kind));
        }
    }

    private double AreaOf(int kind) => (double)_kinds.Across[kind] * _kinds.Along[kind] / _kinds.MeanArea;

    /// <summary>Weighs every rectangle on the state's gap and adds the best to the candidates.</summary>
    /// <param name="now">The layer.</param>
    /// <param name="state">Its state.</param>
    public void Weigh(BeamLayer now, int state)
    {
        int at = state * now.Stride;
        int segments = now.Segments[state];
        int gap = now.Gap[state];
        long floor = now.Y[at + gap];
        long extent = now.X[at + gap + 1] - now.X[at + gap];
        long left = (gap > 0 ? now.Y[at + gap - 1] : _height) - floor;
        long right = (gap < segments - 1 ? now.Y[at + gap + 1] : _height) - floor;
        long room = _height - floor;
        var open = now.OpenOf(state);
        var sums = now.Sums;
        long narrowest = sums is null ? _ways.Narrowest(open) : 0;
        // What the state has lost already; its gap's own rows are counted anew with what is laid there.
        long before = now.Waste[state] + now.RowLoss[state] - (sums?.LostAcross(state, extent) ?? 0) * Math.Min(left, right);
        // What counts for the copies left before one is laid: of all moves of the state, the same.
        double burden = BeamGuide.Remaining * (sums is null ? now.Remaining[state] / _kinds.MeanArea : now.Hardness[state]);
        Debug.Assert(extent > 0 && left >= 0 && right >= 0, "The lowest gap is not a gap.");
        _best.Clear();
        var weighed = 1;
        int ways = _ways.UpTo(extent);
        for (var word = 0; word * BeamWays.WordBits < ways; word++)
        {
            for (ulong bits = BeamWays.First(open, word, ways); bits != 0; bits &= bits - 1)
            {
                weighed++;
                int way = word * BeamWays.WordBits + BitOperations.TrailingZeroCount(bits);
                var (across, along) = (_ways.Across[way], _ways.Along[way]);
                if (along > room)
                {
                    continue;
                }

                // At the wall that it is level with; else at the higher one, where it leaves the
                // plainer skyline.
                bool atLeft = along == left || (along != right && left >= right);
                var (near, far) = atLeft ? (left, right) : (right, left);
                long rest = extent - across;
                long waste = before;
                long lostBeside = sums?.LostAcross(state, rest) ?? (rest < narrowest ? rest : 0);
                // What counts against a move: how many segments the skyline has then, and how far it rises and falls in all.
                int level = segments - (along == near ? 1 : 0);
                long edges = Math.Abs(along - near) - near;
                if (rest == 0)
                {
                    level -= along == far ? 1 : 0;
                    edges += Math.Abs(along - far) - far;
                }
                // What is left beside it can still be used: one segment more.
                else if (lostBeside < rest)
                {
                    level++;
                    edges += along;
                    waste += lostBeside * Math.Min(along, far);
                }
                else
                {
                    // Nothing fits beside it: that stretch is lost up to the lower of both.
                    long lost = Math.Min(along, far);
                    waste += rest * lost;
                    edges += along - 2 * lost;
                }

                waste += (sums?.LostAlong(state, room - along) ?? 0) * across;
                if (waste <= _slack)
                {
                    // The less the better.
                    _best.Add(
                        _forSegment * level + _forEdge * edges + _forWaste * waste + burden + _against[_ways.Kind[way]],
                        new BeamMove(way, atLeft).Code
                    );
                }
            }
        }

        _budget.Spend(weighed);
        for (var index = 0; index < _best.Count; index++)
        {
            var (score, move) = _best[index];
            Candidates.Add(score, state, move);
        }
    }
}
