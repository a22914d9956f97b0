namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>Looks for a layout of all copies in a box, many partial layouts abreast (beam search: Ow and Morton 1988). Each lays one
/// rectangle on the lowest gap of its skyline; of all that follow, the best by a guide go on, few from each parent, so that they
/// stay different. A partial layout ends once it has lost more area than the box can spare.</summary>
internal sealed class BeamSearch
{
    private const int Weighed = 4;
    private const int KeptOfParent = 2;
    private readonly RectangleSet _set;
    private readonly StepBudget _budget;
    private readonly int _states;
    private readonly BeamLayer[] _layers;
    private readonly BeamHistory _history;
    private readonly StateMarks _marks;
    private readonly double[] _liking;
    private readonly double[] _score;
    private readonly int[] _move;
    private readonly double[] _best = new double[Weighed];
    private readonly int[] _bestMove = new int[Weighed];
    private readonly int[] _children;
    private long[] _across;
    private long[] _along;
    private long _height;
    private long _slack;
    private BeamGuide _guide;

    public BeamSearch(RectangleSet set, int states, StepBudget budget)
    {
        (_set, _states, _budget) = (set, states, budget);
        _layers = [new BeamLayer(states, set.Copies, set.Kinds), new BeamLayer(states, set.Copies, set.Kinds)];
        _history = new BeamHistory(set, states);
        _marks = new StateMarks(states, set.Kinds);
        _liking = new double[set.Kinds];
        (_score, _move, _children) = (new double[states * Weighed], new int[states * Weighed], new int[states]);
        (_across, _along) = (set.Across, set.Along);
    }

    /// <summary>How many partial layouts go abreast.</summary>
    public int States => _states;

    /// <summary>Searches once, along the box or across it.</summary>
    /// <returns>Whether a layout was found; it is then written to the arrays.</returns>
    public bool Run(long length, bool sideways, BeamGuide guide, ref Xorshift random, long[] x, long[] y, bool[] turned)
    {
        (_across, _along) = sideways ? (_set.Along, _set.Across) : (_set.Across, _set.Along);
        long width = sideways ? length : _set.Width;
        (_height, _guide, _slack) = (sideways ? _set.Width : length, guide, _set.Width * length - _set.Area);
        if (_slack < 0)
        {
            return false;
        }

        for (var kind = 0; kind < _set.Kinds; kind++)
        {
            _liking[kind] = guide.Noise * (random.Next(1 << 20) / (double)(1 << 20) - 0.5);
        }

        var (now, next) = (_layers[0], _layers[1]);
        now.Begin(_set, width);
        var states = 1;
        for (var depth = 0; depth < _set.Copies && states > 0; depth++)
        {
            var found = 0;
            for (var state = 0; state < states; state++)
            {
                found = Weigh(now, state, found);
            }

            Array.Sort(_score, _move, 0, found);
            states = Advance(now, next, depth, found);
            (now, next) = (next, now);
        }

        if (states > 0)
        {
            _history.Read(sideways, x, y, turned);
        }

        return states > 0;
    }

    /// <summary>Weighs every rectangle on the state's gap and adds the best to the candidates.</summary>
    private int Weigh(BeamLayer now, int state, int found)
    {
        int at = state * now.Stride;
        int segments = now.Segments[state];
        int gap = now.Lowest(state);
        long floor = now.Y[at + gap];
        long extent = now.X[at + gap + 1] - now.X[at + gap];
        long left = (gap > 0 ? now.Y[at + gap - 1] : _height) - floor;
        long right = (gap < segments - 1 ? now.Y[at + gap + 1] : _height) - floor;
        var left0 = now.Left.AsSpan(state * _set.Kinds, _set.Kinds);
        long narrowest = Narrowest(left0);
        double mean = (double)_set.Area / _set.Copies;
        double side = Math.Sqrt(mean);
        var kept = 0;
        var weighed = 1;
        for (var kind = 0; kind < left0.Length; kind++)
        {
            if (left0[kind] == 0)
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

                bool atLeft = along == left || (along != right && left >= right);
                var (near, far) = atLeft ? (left, right) : (right, left);
                long rest = extent - across;
                long waste = now.Waste[state];
                double level = segments - (along == near ? 1 : 0);
                double steps = Math.Abs(along - near) - near;
                if (rest == 0)
                {
                    level -= along == far ? 1 : 0;
                    steps += Math.Abs(along - far) - far;
                }
                else if (rest >= narrowest)
                {
                    level++;
                    steps += along;
                }
                else
                {
                    long lost = Math.Min(along, far);
                    waste += rest * lost;
                    steps += along - 2 * lost;
                }

                if (waste <= _slack)
                {
                    double remaining = now.Remaining[state] - (double)across * along;
                    double score = _guide.Segments * level + _guide.Steps * steps / side + _liking[kind]
                        + (BeamGuide.Waste * waste + BeamGuide.Remaining * remaining) / mean;
                    kept = Insert(kept, score, kind * 4 + turn * 2 + (atLeft ? 1 : 0));
                }
            }
        }

        _budget.Spend(weighed);
        for (var index = 0; index < kept; index++)
        {
            (_score[found], _move[found]) = (_best[index], state * _set.Kinds * 4 + _bestMove[index]);
            found++;
        }

        return found;
    }

    private int Insert(int kept, double score, int move)
    {
        if (kept == Weighed && score >= _best[Weighed - 1])
        {
            return kept;
        }

        int at = Math.Min(kept, Weighed - 1);
        for (; at > 0 && _best[at - 1] > score; at--)
        {
            (_best[at], _bestMove[at]) = (_best[at - 1], _bestMove[at - 1]);
        }

        (_best[at], _bestMove[at]) = (score, move);
        return Math.Min(kept + 1, Weighed);
    }

    /// <summary>Makes the next layer from the best candidates; returns its number of states.</summary>
    private int Advance(BeamLayer now, BeamLayer next, int depth, int found)
    {
        Array.Clear(_children);
        _marks.Clear();
        var states = 0;
        for (var index = 0; index < found && states < _states; index++)
        {
            int parent = _move[index] / (4 * _set.Kinds);
            int move = _move[index] % (4 * _set.Kinds);
            if (_children[parent] == KeptOfParent || !Follow(now, parent, move, next, states, depth))
            {
                continue;
            }

            _children[parent]++;
            states++;
        }

        return states;
    }

    private bool Follow(BeamLayer now, int parent, int move, BeamLayer next, int state, int depth)
    {
        var (kind, turned, atLeft) = (move >> 2, (move & 2) != 0, (move & 1) != 0);
        var (across, along) = turned ? (_along[kind], _across[kind]) : (_across[kind], _along[kind]);
        int gap = now.Lowest(parent);
        int at = parent * now.Stride + gap;
        next.Lay(state, now, parent, gap, across, along, atLeft);
        _budget.Spend((next.Segments[state] + _set.Kinds) / 3);
        var left = next.Left.AsSpan(state * _set.Kinds, _set.Kinds);
        now.Left.AsSpan(parent * _set.Kinds, _set.Kinds).CopyTo(left);
        left[kind]--;
        if (!Settle(next, state, left) || !_marks.Add(next, state, left))
        {
            return false;
        }

        _history.Note(depth, state, parent, kind, turned, atLeft ? now.X[at] : now.X[at + 1] - across, now.Y[at]);
        return true;
    }

    /// <summary>Gives up the gaps that no copy fits; false when that loses too much.</summary>
    private bool Settle(BeamLayer layer, int state, ReadOnlySpan<int> left)
    {
        while (layer.Remaining[state] > 0)
        {
            int gap = layer.Lowest(state);
            int at = state * layer.Stride + gap;
            if (AnyFits(layer.X[at + 1] - layer.X[at], _height - layer.Y[at], left))
            {
                break;
            }

            if (layer.Segments[state] == 1)
            {
                return false;
            }

            layer.Raise(state, gap, _height);
        }

        return layer.Waste[state] <= _slack;
    }

    private bool AnyFits(long extent, long room, ReadOnlySpan<int> left)
    {
        for (var kind = 0; kind < left.Length; kind++)
        {
            if (left[kind] > 0 && ((_across[kind] <= extent && _along[kind] <= room)
                || (_set.Turns[kind] && _along[kind] <= extent && _across[kind] <= room)))
            {
                return true;
            }
        }

        return false;
    }

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
