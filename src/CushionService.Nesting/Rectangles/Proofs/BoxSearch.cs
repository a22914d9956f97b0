using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>Decides whether all rectangles fit a box, by depth-first search over skylines. In a layout that is pushed down and
/// left as far as it goes (Christofides and Whitlock 1977) one of three things holds of the lowest gap: a rectangle lies
/// in its left corner; or the leftmost one on its floor touches an overhang from the left, so that it is taller than the
/// left wall and what is left of it is lost up to that wall; or nothing lies on the floor and the gap is lost up to the lower
/// wall. The area that may be lost is the box less the rectangles, which ends most branches early.</summary>
internal sealed partial class BoxSearch
{
    private const int WordsPerStep = 64;
    private readonly int[] _across;
    private readonly int[] _along;
    private readonly bool[] _turns;
    private readonly int[] _left;
    private readonly int _kinds;
    private readonly int _copies;
    private readonly int _stride;
    private readonly int[] _x;
    private readonly int[] _y;
    private readonly int[] _candidate;
    private readonly long[] _worth;
    private readonly int[] _levelX;
    private readonly int[] _levelY;
    private readonly AxisWeights _rowWeights;
    private readonly AxisWeights _columnWeights;
    private readonly long[] _radix;
    private readonly long[] _rowShare;
    private readonly long[] _columnShare;
    private readonly long[] _bothShare;
    private readonly long _rowFactor;
    private readonly long _columnFactor;
    private readonly SubsetSums _rows;
    private readonly SubsetSums _columns;
    private readonly SubsetSums _positions;
    private readonly ulong[] _seen;
    private readonly int[] _laidKind;
    private readonly int[] _laidX;
    private readonly int[] _laidY;
    private readonly bool[] _laidTurned;
    private readonly long _area;
    private readonly int _width;
    private readonly int _height;
    private readonly StepBudget _budget;
    private long _stop;
    private int _laid;

    /// <summary>Sizes everything once.</summary>
    /// <param name="box">The rectangles and the box.</param>
    /// <param name="rowWeights">Weights along the width.</param>
    /// <param name="columnWeights">Weights along the height.</param>
    /// <param name="seenLog">Binary logarithm of how many states that were ruled out are kept.</param>
    /// <param name="budget">Pays for the steps.</param>
    public BoxSearch(BoxContents box, AxisWeights rowWeights, AxisWeights columnWeights, int seenLog, StepBudget budget)
    {
        var (across, along, turns, count, width, height) = box;
        (_across, _along, _turns, _left, _budget) = (across, along, turns, [.. count], budget);
        (_rowWeights, _columnWeights) = (rowWeights, columnWeights);
        _kinds = across.Length;
        _copies = count.Sum();
        _stride = _copies + 3;
        int depths = 3 * _copies + 4;
        _x = new int[_stride * depths];
        _y = new int[_stride * depths];
        _levelX = new int[_stride];
        _levelY = new int[_stride];
        long states = 1;
        _radix = new long[_kinds];
        for (var kind = 0; kind < _kinds; kind++)
        {
            (_radix[kind], states) = (states, Math.Min(states * (count[kind] + 1), int.MaxValue));
        }

        _rows = new SubsetSums(width, states);
        _columns = new SubsetSums(height, states);
        _positions = new SubsetSums(width, 1);
        _seen = new ulong[2 << seenLog];
        budget.Spend(_seen.Length / WordsPerStep);
        (_laidKind, _laidX, _laidY, _laidTurned) = (new int[_copies], new int[_copies], new int[_copies], new bool[_copies]);
        Tally();
        _positions.Recall(0);
        Tally(_positions, _across, _along);
        (_width, _height) = (_rows.Greatest(width), _columns.Greatest(height));
        for (var kind = 0; kind < _kinds; kind++)
        {
            _area += (long)across[kind] * along[kind] * count[kind];
        }

        var sideways = box.Sideways;
        _rowShare = [.. Enumerable.Range(0, _kinds).Select(kind => rowWeights.Share(kind, box))];
        _columnShare = [.. Enumerable.Range(0, _kinds).Select(kind => columnWeights.Share(kind, sideways))];
        // One turn serves rows and columns at once: the sum of the two needs, each scaled by the other's room, in the turn where it is least.
        _rowFactor = Math.Max(1, columnWeights.Best[height] * width >> 20);
        _columnFactor = Math.Max(1, rowWeights.Best[width] * height >> 20);
        _bothShare =
        [
            .. Enumerable
                .Range(0, _kinds)
                .Select(kind =>
                {
                    var (rowUpright, rowTurned) = rowWeights.Shares(kind, box);
                    var (columnUpright, columnTurned) = columnWeights.Shares(kind, sideways);
                    long upright =
                        Math.Max(rowUpright, columnUpright) == long.MaxValue
                            ? long.MaxValue
                            : rowUpright * _rowFactor + columnUpright * _columnFactor;
                    long turned =
                        Math.Max(rowTurned, columnTurned) == long.MaxValue
                            ? long.MaxValue
                            : rowTurned * _rowFactor + columnTurned * _columnFactor;
                    return Math.Min(upright, turned);
                }),
        ];
        _candidate = new int[2 * _kinds * depths];
        _worth = new long[2 * _kinds * depths];
    }

    /// <summary>How many rectangles are laid after a layout was found.</summary>
    public int Laid => _laid;

    /// <summary>Kind, corner and turn of a laid rectangle.</summary>
    public (int Kind, int X, int Y, bool Turned) this[int index] => (_laidKind[index], _laidX[index], _laidY[index], _laidTurned[index]);

    /// <summary>Searches for at most so many steps.</summary>
    public BoxOutcome Run(long steps)
    {
        long slack = (long)_width * _height - _area;
        if (slack < 0)
        {
            return BoxOutcome.Impossible;
        }

        _stop = _budget.Spent + steps;
        (_x[0], _x[1], _y[0]) = (0, _width, 0);
        _laid = 0;
        return Explore(0, 1, slack);
    }

    private BoxOutcome Explore(int depth, int segments, long slack)
    {
        if (_laid == _copies)
        {
            return BoxOutcome.Found;
        }

        if (_budget.Spent >= _stop)
        {
            return BoxOutcome.Unknown;
        }

        _budget.Spend(24);
        int at = depth * _stride;
        Tally();
        segments = Settle(at, segments, ref slack);
        if (slack < 0)
        {
            return BoxOutcome.Impossible;
        }

        int gap = Lowest(_y, at, segments);
        int floor = _y[at + gap];
        if (floor >= _height)
        {
            return BoxOutcome.Impossible;
        }

        if (TooMuchIsLost(at, segments))
        {
            return BoxOutcome.Impossible;
        }

        var (keyA, keyB) = Key(at, segments);
        int slot = (int)(keyA & (ulong)(_seen.Length / 2 - 1)) * 2;
        if (_seen[slot] == keyA && _seen[slot + 1] == keyB)
        {
            return BoxOutcome.Impossible;
        }

        int leftEnd = _x[at + gap];
        int extent = _x[at + gap + 1] - leftEnd;
        int leftWall = gap > 0 ? _y[at + gap - 1] : _height;
        int rightWall = gap < segments - 1 ? _y[at + gap + 1] : _height;
        int first = depth * 2 * _kinds;
        int last = Corners(first, extent, floor, leftWall, rightWall);
        for (int index = first; index < last; index++)
        {
            var outcome = Branch(depth, segments, gap, _candidate[index] >> 1, (_candidate[index] & 1) == 1, 0, slack);
            if (outcome != BoxOutcome.Impossible)
            {
                return outcome;
            }
        }

        if (gap > 0)
        {
            var outcome = Overhangs(depth, segments, gap, slack);
            if (outcome != BoxOutcome.Impossible)
            {
                return outcome;
            }
        }

        int to = Math.Min(leftWall, rightWall);
        long given = (long)extent * (to - floor);
        if (given <= slack)
        {
            var outcome = Explore(depth + 1, Raise(at, segments, gap, to), slack - given);
            if (outcome != BoxOutcome.Impossible)
            {
                return outcome;
            }
        }

        (_seen[slot], _seen[slot + 1]) = (keyA, keyB);
        return BoxOutcome.Impossible;
    }

    private BoxOutcome Branch(int depth, int segments, int gap, int kind, bool turned, int offset, long slack)
    {
        int at = depth * _stride;
        int floor = _y[at + gap];
        int x = _x[at + gap] + offset;
        int leftWall = gap > 0 ? _y[at + gap - 1] : _height;
        var (across, along) = turned ? (_along[kind], _across[kind]) : (_across[kind], _along[kind]);
        int next = Lay(at, segments, gap, offset, across, along, leftWall);
        _left[kind]--;
        (_laidKind[_laid], _laidX[_laid], _laidY[_laid], _laidTurned[_laid]) = (kind, x, floor, turned);
        _laid++;
        var outcome = Explore(depth + 1, next, slack - (long)offset * (leftWall - floor));
        if (outcome == BoxOutcome.Found)
        {
            return outcome;
        }

        _laid--;
        _left[kind]++;
        return outcome;
    }

    /// <summary>The rectangles that stand on the floor under an overhang, to the right of the gap's corner.</summary>
    private BoxOutcome Overhangs(int depth, int segments, int gap, long slack)
    {
        int at = depth * _stride;
        int lost = _y[at + gap - 1] - _y[at + gap];
        int extent = _x[at + gap + 1] - _x[at + gap];
        for (var code = 0; code < 2 * _kinds; code++)
        {
            int kind = code >> 1;
            bool turned = (code & 1) == 1;
            var (across, along) = turned ? (_along[kind], _across[kind]) : (_across[kind], _along[kind]);
            if (_left[kind] == 0 || (turned && !_turns[kind]) || along <= lost || _y[at + gap] + along > _height)
            {
                continue;
            }

            for (var offset = 1; offset <= extent - across && (long)offset * lost <= slack; offset++)
            {
                if (_positions.Holds(_x[at + gap] + offset))
                {
                    var outcome = Branch(depth, segments, gap, kind, turned, offset, slack);
                    if (outcome != BoxOutcome.Impossible)
                    {
                        return outcome;
                    }
                }
            }
        }

        return BoxOutcome.Impossible;
    }

    /// <summary>The rectangles that can lie in the gap's left corner, best fit first.</summary>
    private int Corners(int first, int extent, int floor, int leftWall, int rightWall)
    {
        int count = first;
        for (var code = 0; code < 2 * _kinds; code++)
        {
            int kind = code >> 1;
            bool turned = (code & 1) == 1;
            var (across, along) = turned ? (_along[kind], _across[kind]) : (_across[kind], _along[kind]);
            if (_left[kind] == 0 || (turned && !_turns[kind]) || across > extent || floor + along > _height)
            {
                continue;
            }

            int rise = floor + along;
            long level = (across == extent ? 4 : 0) + (rise == leftWall ? 2 : 0) + (rise == rightWall ? 1 : 0);
            long worth = (level << 40) + (long)across * along;
            int at = count++;
            for (; at > first && _worth[at - 1] < worth; at--)
            {
                (_candidate[at], _worth[at]) = (_candidate[at - 1], _worth[at - 1]);
            }

            (_candidate[at], _worth[at]) = (code, worth);
        }

        return count;
    }
}
