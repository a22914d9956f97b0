namespace CushionService.Nesting.Rectangles.Beams;

/// <content>How good it looks to lay a rectangle on a gap.</content>
internal sealed partial class BeamSearch
{
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
        var copies = now.Left.AsSpan(state * _set.Kinds, _set.Kinds);
        long narrowest = Narrowest(copies);
        double mean = (double)_set.Area / _set.Copies;
        double side = Math.Sqrt(mean);
        var kept = 0;
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
                    double score =
                        _guide.Segments * level
                        + _guide.Steps * steps / side
                        + _liking[kind]
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
