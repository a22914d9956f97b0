using System.Diagnostics;
using CushionService.Nesting.Rectangles.Proofs;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.PerfectBoxes;

/// <summary>Looks depth first for a layout of a box that is full or nearly so. What makes such a box hard for a beam makes it easy here:
/// with next to no area to lose, nearly every wrong step shows at once (Lesh, Marks, McMahon and Mitzenmacher 2004). Each node
/// takes the gap with the fewest candidates. It is a heuristic: it tries only corners, so that a search without a result proves
/// nothing.</summary>
internal sealed class PerfectBox
{
    // Sums that are counted anew in the time of a step.
    private const int SumsPerStep = 24;

    // What a node takes beside its sums and candidates.
    private const int StepsOfNode = 16;
    private readonly BoxContents _box;
    private readonly int[] _left;
    private readonly int _copies;
    private readonly long _area;
    private readonly BoxSkylines _skylines;
    private readonly BoxLosses _losses;

    // What is laid, and the states that were searched in vain. The latter stay from run to run: a hash
    // may be wrong, which costs a layout and never a proof.
    private readonly LaidRectangles _laid;
    private readonly FailedStates _failed;
    private readonly GapCandidates _candidates;
    private readonly StepBudget _budget;
    private ulong _leftKey;
    private long _nodesLeft;

    /// <summary>Sizes everything once.</summary>
    /// <param name="box">The rectangles and the box.</param>
    /// <param name="failedLog">Binary logarithm of how many failed states are kept.</param>
    /// <param name="budget">Pays for the steps.</param>
    public PerfectBox(BoxContents box, int failedLog, StepBudget budget)
    {
        (_box, _left, _budget) = (box, [.. box.Count], budget);
        _copies = _left.Sum();
        int depths = 2 * _copies + 4;
        _skylines = new BoxSkylines(_copies + 3, depths, box.Width, box.Height);
        _losses = new BoxLosses(box);
        _laid = new LaidRectangles(_copies);
        _failed = new FailedStates(failedLog, _left.Length);
        _candidates = new GapCandidates(box, _left, depths, _losses);
        for (var kind = 0; kind < _left.Length; kind++)
        {
            _area += (long)box.Across[kind] * box.Along[kind] * _left[kind];
        }
    }

    /// <summary>The rectangles, after a layout was found.</summary>
    public LaidRectangles Laid => _laid;

    /// <summary>Area that may be lost.</summary>
    public long Slack => (long)_box.Width * _box.Height - _area;

    /// <summary>Searches from the empty box for a number of nodes.</summary>
    /// <param name="nodes">Number of nodes.</param>
    /// <param name="noise">How far the liking of kinds and turns goes up and down: 0 for none, 1 for half of the worth.</param>
    /// <param name="random">Draws the likings.</param>
    /// <returns><see cref="BoxOutcome.Impossible"/> when nothing is left to try, which is no proof.</returns>
    public BoxOutcome Run(long nodes, double noise, ref Xorshift random)
    {
        if (Slack < 0)
        {
            return BoxOutcome.Impossible;
        }

        _box.Count.CopyTo(_left, 0);
        _laid.Clear();
        _skylines.Clear();
        _candidates.Likings.Draw(noise, ref random);
        (_nodesLeft, _leftKey) = (nodes, 0);
        for (var kind = 0; kind < _left.Length; kind++)
        {
            // A sum of salts, so that taking one copy out of the key is one subtraction.
            _leftKey += _failed.Salt(kind) * (ulong)_left[kind];
        }

        return Explore(0, 1, Slack, -1);
    }

    /// <summary>One node: a state that failed before is not opened again.</summary>
    /// <param name="depth">Depth of the search.</param>
    /// <param name="segments">Segments of its skyline.</param>
    /// <param name="slack">Area that may still be lost.</param>
    /// <param name="kind">The kind that was laid last.</param>
    /// <returns><see cref="BoxOutcome.Unknown"/> when the nodes ran out; such a state is not kept, since it did not
    /// fail.</returns>
    private BoxOutcome Explore(int depth, int segments, long slack, int kind)
    {
        Debug.Assert(_laid.Count + _left.Sum() == _copies, "Copies laid and copies left are not all copies.");
        if (_laid.Count == _copies)
        {
            return BoxOutcome.Found;
        }

        if (_nodesLeft-- <= 0)
        {
            return BoxOutcome.Unknown;
        }

        int at = _skylines.Row(depth);
        _budget.Spend(StepsOfNode + 2 * segments);
        ulong key = FailedStates.Key(_skylines, at, segments, _leftKey);
        if (_failed.Holds(key))
        {
            return BoxOutcome.Impossible;
        }

        _losses.Turn(_laid.Count, kind);
        _budget.Spend(2 * segments + _losses.Sums / SumsPerStep);
        var outcome = Open(depth, segments, slack, kind);
        if (outcome == BoxOutcome.Impossible)
        {
            _failed.Add(key);
        }

        return outcome;
    }

    /// <summary>Lays each candidate on the tightest gap in turn, then closes the gap, if that can be
    /// paid.</summary>
    /// <param name="depth">Depth of the search.</param>
    /// <param name="segments">Segments of its skyline.</param>
    /// <param name="slack">Area that may still be lost.</param>
    /// <param name="laid">The kind that was laid last.</param>
    private BoxOutcome Open(int depth, int segments, long slack, int laid)
    {
        int at = _skylines.Row(depth);
        slack -= _losses.RaiseColumns(_skylines, at, ref segments);
        if (slack < 0 || !_losses.RowsAreAffordable(_skylines, at, segments, slack))
        {
            return BoxOutcome.Impossible;
        }

        int gap = _candidates.Tightest(_skylines, at, segments, slack, _budget);
        int floor = _skylines.Y[at + gap];
        int leftEnd = _skylines.X[at + gap];
        int extent = _skylines.X[at + gap + 1] - leftEnd;
        int leftWall = _skylines.LeftWall(at, gap);
        int rightWall = _skylines.RightWall(at, gap, segments);
        int first = _candidates.First(depth);
        int last = _candidates.List(depth, new BoxGap(extent, floor, leftWall, rightWall), slack);
        for (int index = first; index < last; index++)
        {
            var (kind, turned) = _candidates[index];
            var (across, along) = _box.Size(kind, turned);
            // With nothing to lose, a rectangle level with the right wall alone lies there: the rest of
            // the gap must be filled anyway.
            bool atRight = slack == 0 && floor + along == rightWall && floor + along != leftWall;
            int next = _skylines.Lay(at, segments, gap, across, along, atRight);
            _left[kind]--;
            _leftKey -= _failed.Salt(kind);
            _laid.Push(kind, atRight ? leftEnd + extent - across : leftEnd, floor, turned);
            var outcome = Explore(depth + 1, next, slack, kind);
            if (outcome == BoxOutcome.Found)
            {
                return outcome;
            }

            _laid.Pop();
            _left[kind]++;
            _leftKey += _failed.Salt(kind);
            if (outcome == BoxOutcome.Unknown)
            {
                return outcome;
            }
        }

        int wall = Math.Min(leftWall, rightWall);
        long given = (long)extent * (wall - floor);
        return given <= slack && segments > 1
            ? Explore(depth + 1, _skylines.Raise(at, segments, gap, wall), slack - given, laid)
            : BoxOutcome.Impossible;
    }
}
