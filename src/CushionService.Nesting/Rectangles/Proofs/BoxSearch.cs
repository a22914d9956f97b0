using System.Diagnostics;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>Decides whether all rectangles fit a box, by depth-first search over skylines. In a layout that is pushed down and
/// left as far as it goes (Christofides and Whitlock 1977) one of three things holds of the lowest gap: a rectangle lies
/// in its left corner; or the leftmost one on its floor touches an overhang from the left, so that it is taller than the
/// left wall and what is left of it is lost up to that wall; or nothing lies on the floor and the gap is lost up to the lower
/// wall. The area that may be lost is the box less the rectangles, which ends most branches early.</summary>
internal sealed class BoxSearch
{
    // Words of a table that are cleared in the time of a step.
    private const int WordsPerStep = 64;
    private readonly int[] _across;
    private readonly int[] _along;
    private readonly bool[] _turns;
    private readonly int[] _left;
    private readonly int _kinds;
    private readonly int _copies;
    private readonly BoxSkylines _skylines;
    private readonly BoxRoom _room;
    private readonly int[] _candidate;
    private readonly long[] _worth;
    private readonly ulong[] _seen;
    private readonly LaidRectangles _laid;
    private readonly long _area;
    private readonly int _height;
    private readonly StepBudget _budget;
    private long _stop;

    /// <summary>Sizes everything once.</summary>
    /// <param name="box">The rectangles and the box.</param>
    /// <param name="rowWeights">Weights along the width.</param>
    /// <param name="columnWeights">Weights along the height.</param>
    /// <param name="seenLog">Binary logarithm of how many states that were ruled out are kept.</param>
    /// <param name="budget">Pays for the steps.</param>
    public BoxSearch(BoxContents box, AxisWeights rowWeights, AxisWeights columnWeights, int seenLog, StepBudget budget)
    {
        (_across, _along, _turns, _left, _budget) = (box.Across, box.Along, box.Turns, [.. box.Count], budget);
        _kinds = _across.Length;
        _copies = _left.Sum();
        int depths = 3 * _copies + 4;
        _room = new BoxRoom(box, _left, rowWeights, columnWeights);
        _height = _room.Height;
        _skylines = new BoxSkylines(_copies + 3, depths, _room.Width, _height);
        _seen = new ulong[2 << seenLog];
        budget.Spend(_seen.Length / WordsPerStep);
        _laid = new LaidRectangles(_copies);
        for (var kind = 0; kind < _kinds; kind++)
        {
            _area += (long)_across[kind] * _along[kind] * _left[kind];
        }

        _candidate = new int[2 * _kinds * depths];
        _worth = new long[2 * _kinds * depths];
    }

    /// <summary>The rectangles, after a layout was found.</summary>
    public LaidRectangles Laid => _laid;

    /// <summary>Searches for at most so many steps.</summary>
    public BoxOutcome Run(long steps)
    {
        long slack = (long)_room.Width * _height - _area;
        if (slack < 0)
        {
            return BoxOutcome.Impossible;
        }

        _stop = _budget.Spent + steps;
        _skylines.Clear();
        _laid.Clear();
        return Explore(0, 1, slack);
    }

    private BoxOutcome Explore(int depth, int segments, long slack)
    {
        Debug.Assert(_laid.Count + _left.Sum() == _copies, "Copies laid and copies left are not all copies.");
        if (_laid.Count == _copies)
        {
            return BoxOutcome.Found;
        }

        if (_budget.Spent >= _stop)
        {
            return BoxOutcome.Unknown;
        }

        _budget.Spend(24);
        int at = _skylines.Row(depth);
        _room.Tally();
        segments = _room.Settle(_skylines, at, segments, ref slack);
        if (slack < 0)
        {
            return BoxOutcome.Impossible;
        }

        int gap = _skylines.Lowest(at, segments);
        int floor = _skylines.Y[at + gap];
        if (floor >= _height)
        {
            return BoxOutcome.Impossible;
        }

        if (_room.IsTooSmall(_skylines, at, segments))
        {
            return BoxOutcome.Impossible;
        }

        var (keyA, keyB) = Key(at, segments);
        int slot = (int)(keyA & (ulong)(_seen.Length / 2 - 1)) * 2;
        if (_seen[slot] == keyA && _seen[slot + 1] == keyB)
        {
            return BoxOutcome.Impossible;
        }

        int leftEnd = _skylines.X[at + gap];
        int extent = _skylines.X[at + gap + 1] - leftEnd;
        int leftWall = _skylines.LeftWall(at, gap);
        int rightWall = _skylines.RightWall(at, gap, segments);
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
            var outcome = Explore(depth + 1, _skylines.Raise(at, segments, gap, to), slack - given);
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
        int at = _skylines.Row(depth);
        int floor = _skylines.Y[at + gap];
        int x = _skylines.X[at + gap] + offset;
        int lost = offset * (_skylines.LeftWall(at, gap) - floor);
        var (across, along) = turned ? (_along[kind], _across[kind]) : (_across[kind], _along[kind]);
        int next = _skylines.Lay(at, segments, gap, offset, across, along);
        _left[kind]--;
        _laid.Push(kind, x, floor, turned);
        var outcome = Explore(depth + 1, next, slack - lost);
        if (outcome == BoxOutcome.Found)
        {
            return outcome;
        }

        _laid.Pop();
        _left[kind]++;
        return outcome;
    }

    /// <summary>The rectangles that lie on the floor under an overhang, to the right of the gap's corner.</summary>
    private BoxOutcome Overhangs(int depth, int segments, int gap, long slack)
    {
        int at = _skylines.Row(depth);
        int lost = _skylines.Y[at + gap - 1] - _skylines.Y[at + gap];
        int extent = _skylines.X[at + gap + 1] - _skylines.X[at + gap];
        for (var code = 0; code < 2 * _kinds; code++)
        {
            int kind = code >> 1;
            bool turned = (code & 1) == 1;
            var (across, along) = turned ? (_along[kind], _across[kind]) : (_across[kind], _along[kind]);
            if (_left[kind] == 0 || (turned && !_turns[kind]) || along <= lost || _skylines.Y[at + gap] + along > _height)
            {
                continue;
            }

            for (var offset = 1; offset <= extent - across && (long)offset * lost <= slack; offset++)
            {
                if (_room.IsPosition(_skylines.X[at + gap] + offset))
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

    /// <summary>128 bits that tell states apart: the skyline and what is left.</summary>
    private (ulong A, ulong B) Key(int at, int segments)
    {
        var a = 0x9E3779B97F4A7C15UL;
        ulong b = ~a;
        for (var segment = 0; segment < segments; segment++)
        {
            Mix(((ulong)(uint)_skylines.X[at + segment] << 32) | (uint)_skylines.Y[at + segment]);
        }

        for (var kind = 0; kind < _kinds; kind++)
        {
            Mix((ulong)_left[kind] + 0x100000000UL * (ulong)(kind + 1) + (1UL << 63));
        }

        return (a, b);

        void Mix(ulong value)
        {
            a = (a ^ value) * 0xFF51AFD7ED558CCDUL;
            a ^= a >> 32;
            b = (b + value) * 0xC4CEB9FE1A85EC53UL;
            b ^= b >> 29;
        }
    }
}
