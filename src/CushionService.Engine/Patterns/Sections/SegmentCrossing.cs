using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>Where a line or an arc crosses a level or plumb line, and its parts on either side, as long together as the whole.</summary>
internal static class SegmentCrossing
{
    // More halvings than a double has bits for: the crossing is as exact as it can be.
    private const int Halvings = 62;

    /// <summary>Whether a straight segment lies on one side of a crossing line: it crosses once, and only where its ends lie on different
    /// sides. False for an arc, which may turn back.</summary>
    public static bool IsOnOneSide(Segment segment, CrossingLine line) =>
        segment.IsStraight && Math.Sign(line.BeyondOrOn(segment.From)) * Math.Sign(line.BeyondOrOn(segment.To)) >= 0;

    /// <summary>The parts, in order; the segment itself where nothing crosses it.</summary>
    /// <param name="segment">A line or an arc.</param>
    /// <param name="line">The crossing line.</param>
    public static ImmutableArray<Segment> Parts(Segment segment, CrossingLine line)
    {
        if (IsOnOneSide(segment, line))
        {
            return [segment];
        }

        // Square to the line, the crossing is beside either end.
        if (segment.IsStraight && (line.IsPlumb ? segment.From.Y == segment.To.Y : segment.From.X == segment.To.X))
        {
            Point at = line.Beside(segment.From);
            return [segment with { To = at }, segment with { From = at }];
        }

        var from = 0.0;
        foreach (double turn in (double[])[.. Turns(segment, line.Direction), 1])
        {
            if (Crossing(segment, line, from, turn) is { } share)
            {
                (Segment one, Segment next) = Split(segment, share, line);
                return [one, .. Parts(next, line)];
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
    private static double? Crossing(Segment segment, CrossingLine line, double low, double high)
    {
        (long atLow, long atHigh) = (line.BeyondOrOn(segment.At(low)), line.BeyondOrOn(segment.At(high)));
        if (atLow == 0 || atHigh == 0 || (atLow > 0) == (atHigh > 0))
        {
            return null;
        }

        for (var i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = (line.Beyond(segment.At(middle)) > 0) == (atLow > 0) ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    // Both parts together are as long as the segment, so that seams still match to the nanometre. A point that is rounded to the nanometre
    // may miss the line by one.
    private static (Segment One, Segment Next) Split(Segment segment, double share, CrossingLine line)
    {
        Point at = line.Beside(segment.At(share));
        var one = new Segment(segment.From, at, segment.Sweep * share);
        Length rest = segment.Length - one.Length;
        return (one, segment.IsStraight ? new Segment(at, segment.To) : Segment.Arc(at, segment.To, segment.Sweep * (1 - share), rest));
    }
}
