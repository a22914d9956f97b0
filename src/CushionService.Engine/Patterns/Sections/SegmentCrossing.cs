using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>Where a line or an arc crosses a level or plumb line, and its parts on either side, as long together as the whole.</summary>
internal static class SegmentCrossing
{
    // More halvings than a double has bits for: the crossing is as exact as it can be.
    private const int Halvings = 62;
    private const long Sliver = 1000;

    /// <summary>How far a point lies beyond the crossing line, in nanometres; zero all but on it, within a thousandth of a millimetre, so
    /// that no sliver is parted off.</summary>
    /// <param name="point">An end of a segment, or where an arc turns back.</param>
    /// <param name="beyond">The exact distance.</param>
    public static long Beyond(Point point, Func<Point, long> beyond) => beyond(point) is var off && Math.Abs(off) < Sliver ? 0 : off;

    /// <summary>The parts, in order; the segment itself where nothing crosses it.</summary>
    /// <param name="segment">A line or an arc.</param>
    /// <param name="beyond">How far a point lies beyond the crossing line, in nanometres.</param>
    /// <param name="direction">The crossing line's direction, in radians from the x axis.</param>
    public static ImmutableArray<Segment> Parts(Segment segment, Func<Point, long> beyond, double direction)
    {
        // A line crosses once, and only where its ends lie on different sides.
        if (segment.IsStraight && Math.Sign(Beyond(segment.From, beyond)) * Math.Sign(Beyond(segment.To, beyond)) >= 0)
        {
            return [segment];
        }

        var from = 0.0;
        foreach (double turn in (double[])[.. Turns(segment, direction), 1])
        {
            if (Crossing(segment, beyond, from, turn) is { } share)
            {
                (Segment one, Segment next) = Split(segment, share, beyond);
                return [one, .. Parts(next, beyond, direction)];
            }

            from = turn;
        }

        return [segment];
    }

    // Where an arc runs along the crossing line's direction it may turn back.
    private static IEnumerable<double> Turns(Segment segment, double direction)
    {
        if (segment.IsStraight)
        {
            return [];
        }

        IEnumerable<double> shares = Enumerable
            .Range(-5, 11)
            .Select(half => (direction + (half * Math.PI) - segment.StartDirection) / segment.Sweep);
        return shares.Where(share => share is > 1e-9 and < 1 - 1e-9).Order();
    }

    // The share of the segment at which it crosses between two shares, found by bisection; null where both ends lie on one side.
    private static double? Crossing(Segment segment, Func<Point, long> beyond, double low, double high)
    {
        (long atLow, long atHigh) = (Beyond(segment.At(low), beyond), Beyond(segment.At(high), beyond));
        if (atLow == 0 || atHigh == 0 || (atLow > 0) == (atHigh > 0))
        {
            return null;
        }

        for (var i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = (beyond(segment.At(middle)) > 0) == (atLow > 0) ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    // Both parts together are as long as the segment, so that seams still match to the nanometre.
    private static (Segment One, Segment Next) Split(Segment segment, double share, Func<Point, long> beyond)
    {
        Point at = OnLine(segment.At(share), beyond);
        var one = new Segment(segment.From, at, segment.Sweep * share);
        Length rest = segment.Length - one.Length;
        return (one, segment.IsStraight ? new Segment(at, segment.To) : Segment.Arc(at, segment.To, segment.Sweep * (1 - share), rest));
    }

    // A point that is rounded to the nanometre may miss the line by one.
    private static Point OnLine(Point point, Func<Point, long> beyond)
    {
        long off = beyond(point);
        Point across = point.Moved(Length.FromNanometres(-off), Length.Zero);
        return beyond(across) == 0 ? across : point.Moved(Length.Zero, Length.FromNanometres(-off));
    }
}
