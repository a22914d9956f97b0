using System.Diagnostics;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>Decides whether all rectangles fit a box, by depth-first search over skylines. In a layout that is pushed down and
/// left as far as it goes (Christofides and Whitlock 1977) one of three things holds of the lowest gap: a rectangle lies
/// in its left corner; or the leftmost one on its floor touches an overhang from the left, so that it is taller than the
/// left wall and what is left of it is lost up to that wall; or nothing lies on the floor and the gap is lost up to the lower
/// wall. The area that may be lost is the box less the rectangles, which ends most branches early.</summary>
/// <remarks>What ends with <see cref="BoxOutcome.Impossible"/> is a proof, so that nothing here may
/// rest on chance: every bound is a whole number, every state is compared in full, and the three cases
/// leave no layout out.</remarks>
internal sealed class BoxSearch
{
    // Words of a table that are cleared in the time of a step.
    private const int WordsPerStep = 64;

    // What a node takes beside what its tests and its children charge for themselves.
    private const int StepsOfNode = 24;
    private readonly BoxContents _box;
    private readonly int[] _left;
    private readonly int _copies;
    private readonly BoxSkylines _skylines;
    private readonly BoxRoom _room;
    private readonly CornerList _corners;
    private readonly RuledOutStates _ruledOut;
    private readonly LaidRectangles _laid;
    private readonly long _area;
    private readonly int _height;
    private readonly StepBudget _budget;

    // The budget's count of steps at which this run ends.
    private long _stop;

    /// <summary>Sizes everything once.</summary>
    /// <param name="box">The rectangles and the box.</param>
    /// <param name="rowWeights">Weights along the width.</param>
    /// <param name="columnWeights">Weights along the height.</param>
    /// <param name="seenLog">Binary logarithm of how many states that were ruled out are kept.</param>
    /// <param name="budget">Pays for the steps.</param>
    /// <param name="hashMask">Bits of the states' hash that count; a test takes them away so that states collide.</param>
    public BoxSearch(
        BoxContents box,
        AxisWeights rowWeights,
        AxisWeights columnWeights,
        int seenLog,
        StepBudget budget,
        ulong hashMask = ulong.MaxValue
    )
    {
        (_box, _left, _budget) = (box, [.. box.Count], budget);
        _copies = _left.Sum();

        // Each copy is laid once; between two copies a gap may be closed, and a step to the right wall of the box ends it.
        int depths = 3 * _copies + 4;
        _room = new BoxRoom(box, _left, rowWeights, columnWeights);
        _height = _room.Height;
        _skylines = new BoxSkylines(_copies + 3, depths, _room.Width, _height);
        _ruledOut = new RuledOutStates(_room.Width, _height, box.Count, depths, seenLog, hashMask);
        budget.Spend(2 * _ruledOut.Slots / WordsPerStep);
        _laid = new LaidRectangles(_copies);
        _corners = new CornerList(box, _left, _height, depths);
        for (var kind = 0; kind < _left.Length; kind++)
        {
            _area += (long)box.Across[kind] * box.Along[kind] * _left[kind];
        }
    }

    /// <summary>The rectangles, after a layout was found.</summary>
    public LaidRectangles Laid => _laid;

    /// <summary>Searches for at most as many steps as are given.</summary>
    /// <param name="steps">Steps to spend.</param>
    /// <returns><see cref="BoxOutcome.Unknown"/> when they ran out.</returns>
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

    /// <summary>One node: settles what nothing can use, then goes through the three cases of the lowest
    /// gap.</summary>
    /// <param name="depth">Depth of the search.</param>
    /// <param name="segments">Segments of its skyline.</param>
    /// <param name="slack">Area that may still be lost.</param>
    /// <returns><see cref="BoxOutcome.Impossible"/> when no layout goes on from this skyline; then the state is kept as
    /// ruled out.</returns>
    /// <remarks>Cheap tests come first: the area that may be lost, the room of the rows and columns, then the table of
    /// states.</remarks>
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

        _budget.Spend(StepsOfNode);
        int at = _skylines.Row(depth);
        _budget.Spend(_room.Tally());
        segments = _room.Settle(_skylines, at, segments, ref slack);
        if (slack < 0)
        {
            return BoxOutcome.Impossible;
        }

        int gap = _skylines.Lowest(at, segments);
        int floor = _skylines.Y[at + gap];
        // Copies are left and no gap is below the top of the box.
        if (floor >= _height)
        {
            return BoxOutcome.Impossible;
        }

        if (_room.IsTooSmall(_skylines, at, segments))
        {
            return BoxOutcome.Impossible;
        }

        if (_ruledOut.Holds(depth, _skylines, at, segments, _left))
        {
            return BoxOutcome.Impossible;
        }

        int leftEnd = _skylines.X[at + gap];
        int extent = _skylines.X[at + gap + 1] - leftEnd;
        int leftWall = _skylines.LeftWall(at, gap);
        int rightWall = _skylines.RightWall(at, gap, segments);
        // First case: a rectangle lies in the gap's left corner.
        int last = _corners.Write(depth, extent, floor, leftWall, rightWall);
        for (int index = _corners.First(depth); index < last; index++)
        {
            var (kind, turned) = _corners[index];
            var outcome = Branch(depth, segments, gap, kind, turned, 0, slack);
            if (outcome != BoxOutcome.Impossible)
            {
                return outcome;
            }
        }

        // Second case: there is a wall to the left that something could hang over.
        if (gap > 0)
        {
            var outcome = Overhangs(depth, segments, gap, slack);
            if (outcome != BoxOutcome.Impossible)
            {
                return outcome;
            }
        }

        // Third case: nothing lies on the floor.
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

        _ruledOut.Add(depth);
        return BoxOutcome.Impossible;
    }

    /// <summary>Lays a rectangle on the gap's floor, some way from its left end, and searches on; takes
    /// it back unless a layout was found.</summary>
    /// <param name="depth">Depth of the search.</param>
    /// <param name="segments">Segments of its skyline.</param>
    /// <param name="gap">The lowest gap.</param>
    /// <param name="kind">What is laid.</param>
    /// <param name="turned">Whether it is turned.</param>
    /// <param name="offset">From the gap's left end, grid units; 0 for its corner.</param>
    /// <param name="slack">Area that may still be lost.</param>
    private BoxOutcome Branch(int depth, int segments, int gap, int kind, bool turned, int offset, long slack)
    {
        int at = _skylines.Row(depth);
        int floor = _skylines.Y[at + gap];
        int x = _skylines.X[at + gap] + offset;
        int lost = offset * (_skylines.LeftWall(at, gap) - floor);
        var (across, along) = _box.Size(kind, turned);
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
    /// <remarks>What hangs over must be taller than the left wall; left edges lie where sums of extents
    /// can reach.</remarks>
    /// <param name="depth">Depth of the search.</param>
    /// <param name="segments">Segments of its skyline.</param>
    /// <param name="gap">The lowest gap; there is a wall to its left that is no wall of the box.</param>
    /// <param name="slack">Area that may still be lost: each unit of the offset costs the height of that wall over the
    /// floor.</param>
    private BoxOutcome Overhangs(int depth, int segments, int gap, long slack)
    {
        int at = _skylines.Row(depth);
        int lost = _skylines.Y[at + gap - 1] - _skylines.Y[at + gap];
        int extent = _skylines.X[at + gap + 1] - _skylines.X[at + gap];
        for (var code = 0; code < 2 * _left.Length; code++)
        {
            int kind = code >> 1;
            bool turned = (code & 1) == 1;
            var (across, along) = _box.Size(kind, turned);
            if (_left[kind] == 0 || (turned && !_box.Turns[kind]) || along <= lost || _skylines.Y[at + gap] + along > _height)
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
}
