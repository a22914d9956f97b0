using System.Diagnostics;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>Lays all copies in one pass: on the lowest segment of the skyline goes the copy that fits it best, the first
/// in the given order among equals (best fit of Burke, Kendall and Whitwell 2004, with the fitness of Leung, Zhang and
/// Sim 2011: exact width before level top before order). Allocates nothing.</summary>
internal sealed class SkylinePass : ISequencePass
{
    private readonly RectangleSet _set;
    private readonly Skyline _skyline;
    private readonly BestFit _fit;

    // What lies under the skyline from which every pass starts: its greatest height, and the area lost
    // there.
    private long _startTop;
    private long _startLost;

    /// <summary>Sizes everything once.</summary>
    /// <param name="set">All copies.</param>
    /// <param name="width">Width of the strip or sheet, grid units.</param>
    /// <param name="atOnce">The most rectangles and segments on the skyline at once.</param>
    public SkylinePass(RectangleSet set, long width, int atOnce)
    {
        _set = set;
        _skyline = new Skyline(width, atOnce);
        _fit = new BestFit(set, _skyline);
        Layout = new RectangleLayout(set);
    }

    /// <inheritdoc/>
    public RectangleLayout Layout { get; }

    /// <summary>Lets every pass start on a skyline under which some copies lie and some area is lost.</summary>
    /// <param name="skyline">The skyline.</param>
    /// <param name="lost">Area lost under it, square grid units.</param>
    public void StartFrom(Skyline skyline, long lost)
    {
        _skyline.StartFrom(skyline);
        (_startTop, _startLost) = (skyline.Top(), lost);
    }

    /// <inheritdoc/>
    public long Length { get; private set; }

    /// <inheritdoc/>
    public long Lay(int[] order, long limit, long most, StepBudget budget)
    {
        _skyline.Reset();
        _fit.Left.Begin(order);
        // Without a limit nothing that is lost ends the pass; with one, the area of the box less the copies may be lost,
        // and no more.
        bool open = limit >= Skyline.Wall;
        long slack = open ? long.MaxValue : _set.Width * limit - _set.Area - _startLost + most;
        long left = 0;
        foreach (int copy in order)
        {
            left += _set.Across[_set.KindOf[copy]] * _set.Along[_set.KindOf[copy]];
        }

        Length = _startTop;
        while (left > 0)
        {
            int segment = _skyline.Lowest();
            if (!_fit.Choose(segment, limit, budget, out int previous, out bool turned, out bool atLeft))
            {
                if (Math.Min(_skyline.LeftWall(segment), _skyline.RightWall(segment)) >= Skyline.Wall)
                {
                    return left > most ? long.MaxValue : left;
                }

                slack -= _skyline.Raise(segment);
                if (slack < 0)
                {
                    return long.MaxValue;
                }

                continue;
            }

            int copy = _fit.Left.TakeAfter(previous);
            Length = Math.Max(Length, Put(copy, segment, turned, atLeft));
            left -= _set.Across[_set.KindOf[copy]] * _set.Along[_set.KindOf[copy]];
            Debug.Assert(open || Length <= limit, "A copy ends above the limit.");
        }

        Debug.Assert(left == 0 && slack >= 0, "The areas laid, lost and left do not add up to the box.");
        return 0;
    }

    /// <summary>Lays on a sheet what fits, in one pass over <paramref name="order"/>; what was laid moves to its front.</summary>
    /// <returns>How many copies were laid.</returns>
    /// <param name="order">The copies that are left, those to be laid first in front.</param>
    /// <param name="limit">Length of the sheet, grid units.</param>
    /// <param name="budget">Pays for the choices.</param>
    public int Fill(Span<int> order, long limit, StepBudget budget)
    {
        _skyline.Reset();
        _fit.Left.Begin(order);
        var laid = 0;
        while (laid < order.Length)
        {
            int segment = _skyline.Lowest();
            if (!_fit.Choose(segment, limit, budget, out int previous, out bool turned, out bool atLeft))
            {
                if (Math.Min(_skyline.LeftWall(segment), _skyline.RightWall(segment)) >= Skyline.Wall)
                {
                    break;
                }

                _skyline.Raise(segment);
                continue;
            }

            int copy = _fit.Left.TakeAfter(previous);
            Put(copy, segment, turned, atLeft);
            order[laid++] = copy;
        }

        _fit.Left.CopyRest(order[laid..]);
        return laid;
    }

    /// <summary>Lays a copy on a segment; returns where it ends.</summary>
    /// <param name="copy">Which.</param>
    /// <param name="segment">Where.</param>
    /// <param name="turned">Whether it is turned.</param>
    /// <param name="atLeft">Whether at the segment's left end.</param>
    private long Put(int copy, int segment, bool turned, bool atLeft)
    {
        int kind = _set.KindOf[copy];
        var (across, along) = turned ? (_set.Along[kind], _set.Across[kind]) : (_set.Across[kind], _set.Along[kind]);
        long y = _skyline.Y(segment);
        Layout.Put(copy, _skyline.Lay(segment, across, along, atLeft), y, turned);
        return y + along;
    }
}
