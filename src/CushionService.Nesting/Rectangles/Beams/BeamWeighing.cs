using System.Diagnostics;
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

    // The liking of each kind in this run; then, of all candidates of a layer, scores and moves.
    private readonly double[] _liking;
    private readonly double[] _score;
    private readonly int[] _move;
    private readonly BestMoves _best = new();
    private long[] _across;
    private long[] _along;
    private long _height;
    private long _slack;
    private BeamGuide _guide;
    private double _meanSide;

    /// <summary>Sizes everything once.</summary>
    /// <param name="kinds">All copies.</param>
    /// <param name="states">The most states of a layer.</param>
    /// <param name="budget">Pays a step for each rectangle that is weighed.</param>
    public BeamWeighing(BeamKinds kinds, int states, StepBudget budget)
    {
        (_kinds, _set, _budget) = (kinds, kinds.Set, budget);
        _liking = new double[_set.Kinds];
        (_score, _move) = (new double[states * BestMoves.Most], new int[states * BestMoves.Most]);
        (_across, _along) = (kinds.Across, kinds.Along);
    }

    /// <summary>Prepares a run.</summary>
    /// <param name="sideways">Whether the box's axes are exchanged.</param>
    /// <param name="height">Height of the box as the run sees it.</param>
    /// <param name="slack">Area that may be lost.</param>
    /// <param name="guide">What looks good.</param>
    /// <param name="random">Gives each kind its liking for this run.</param>
    public void Begin(bool sideways, long height, long slack, BeamGuide guide, ref Xorshift random)
    {
        (_height, _slack, _guide) = (height, slack, guide);
        (_across, _along) = sideways ? (_kinds.Along, _kinds.Across) : (_kinds.Across, _kinds.Along);
        // Units along the two axes may differ; the sides of a square do not.
        _meanSide = Math.Sqrt((double)_set.Area / _set.Copies) / (sideways ? _kinds.UnitX : _kinds.UnitY);
        for (var kind = 0; kind < _set.Kinds; kind++)
        {
            _liking[kind] = guide.Noise * (random.Next(1 << 20) / (double)(1 << 20) - 0.5);
        }
    }

    /// <summary>The state and the move of a candidate, after <see cref="Sort"/> from the best on.</summary>
    public (int State, BeamMove Move) this[int candidate]
    {
        get
        {
            var (state, code) = Math.DivRem(_move[candidate], 4 * _set.Kinds);
            return (state, BeamMove.Of(code));
        }
    }

    /// <summary>Puts the first candidates in order, the best first.</summary>
    /// <param name="candidates">How many there are.</param>
    public void Sort(int candidates) => Array.Sort(_score, _move, 0, candidates);

    /// <summary>Weighs every rectangle on the state's gap and adds the best to the candidates found so far; returns how many there are
    /// then.</summary>
    /// <param name="now">The layer.</param>
    /// <param name="state">Its state.</param>
    /// <param name="found">Candidates found so far.</param>
    public int Weigh(BeamLayer now, int state, int found)
    {
        int at = state * now.Stride;
        int segments = now.Segments[state];
        int gap = now.Lowest(state);
        long floor = now.Y[at + gap];
        long extent = now.X[at + gap + 1] - now.X[at + gap];
        long left = (gap > 0 ? now.Y[at + gap - 1] : _height) - floor;
        long right = (gap < segments - 1 ? now.Y[at + gap + 1] : _height) - floor;
        var copies = now.Left.AsSpan(state * _set.Kinds, _set.Kinds);
        var sums = now.Sums;
        long narrowest = sums is null ? Narrowest(copies) : 0;
        // What the state has lost already; its gap's own rows are counted anew with what is laid there.
        long before = now.Waste[state] + now.RowLoss[state] - (sums?.LostAcross(state, extent) ?? 0) * Math.Min(left, right);
        Debug.Assert(extent > 0 && left >= 0 && right >= 0, "The lowest gap is not a gap.");
        _best.Clear();
        var weighed = 1;
        for (var kind = 0; kind < copies.Length; kind++)
        {
            if (copies[kind] == 0)
            {
                continue;
            }

            for (var turn = 0; turn < (_set.Turns[kind] ? 2 : 1); turn++)
            {
                weighed++;
                var (across, along) = turn == 0 ? (_across[kind], _along[kind]) : (_along[kind], _across[kind]);
                if (across > extent || floor + along > _height)
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
                double level = segments - (along == near ? 1 : 0);
                double steps = Math.Abs(along - near) - near;
                if (rest == 0)
                {
                    level -= along == far ? 1 : 0;
                    steps += Math.Abs(along - far) - far;
                }
                // What is left beside it can still be used: one segment more.
                else if (lostBeside < rest)
                {
                    level++;
                    steps += along;
                    waste += lostBeside * Math.Min(along, far);
                }
                else
                {
                    // Nothing fits beside it: that stretch is lost up to the lower of both.
                    long lost = Math.Min(along, far);
                    waste += rest * lost;
                    steps += along - 2 * lost;
                }

                waste += (sums?.LostAlong(state, _height - floor - along) ?? 0) * across;
                if (waste <= _slack)
                {
                    // The less the better. Lengths are divided by the mean side and areas by the mean area, so that
                    // weights suit pieces of any size.
                    double score =
                        _guide.Segments * level + _guide.Steps * steps / _meanSide + _liking[kind] + Burden(now, state, kind, waste);
                    _best.Add(score, new BeamMove(kind, turn == 1, atLeft).Code);
                }
            }
        }

        _budget.Spend(weighed);
        for (var index = 0; index < _best.Count; index++)
        {
            var (score, move) = _best[index];
            (_score[found], _move[found]) = (score, state * _set.Kinds * 4 + move);
            found++;
        }

        return found;
    }

    /// <summary>What counts for areas lost and copies left once a copy of a kind is laid. Without sums it is whole areas, so that states
    /// of equal areas are equals.</summary>
    private double Burden(BeamLayer now, int state, int kind, long waste) =>
        now.Sums is null
            ? (BeamGuide.Waste * waste + BeamGuide.Remaining * (now.Remaining[state] - (double)_across[kind] * _along[kind]))
                / _kinds.MeanArea
            : BeamGuide.WasteInTight * waste / _kinds.MeanArea + BeamGuide.Remaining * (now.Hardness[state] - _kinds.Hardness[kind]);

    /// <summary>The least width that any copy left can take.</summary>
    private long Narrowest(ReadOnlySpan<int> left)
    {
        long narrowest = long.MaxValue;
        for (var kind = 0; kind < left.Length; kind++)
        {
            if (left[kind] > 0)
            {
                narrowest = Math.Min(narrowest, _set.Turns[kind] ? Math.Min(_across[kind], _along[kind]) : _across[kind]);
            }
        }

        return narrowest;
    }
}
