using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns.Additions;

/// <summary>Where straps across an outline end: on level lines that divide its depth evenly, from left to right (common practice,
/// no source). Where the sides slant or step, what divides each side evenly would lie aslant.</summary>
public static class StrapLevels
{
    /// <summary>How long the longest strap across an outline is from seam to seam.</summary>
    /// <param name="outline">The finished outline.</param>
    /// <param name="count">How many straps, at least one.</param>
    public static Length Longest(Outline outline, int count) =>
        Of(outline.Sides.SelectMany(side => side.Path), count).Max(strap => strap.Right.X - strap.Left.X);

    /// <summary>Both ends of each strap, from the front to the back.</summary>
    /// <param name="outline">Lines and arcs, closed; split where an arc reaches furthest.</param>
    /// <param name="count">How many straps, at least one.</param>
    public static ImmutableArray<(Point Left, Point Right)> Of(IEnumerable<Segment> outline, int count)
    {
        Segment[] segments = [.. outline];
        long front = segments.Min(segment => segment.From.Y.Nanometres),
            depth = segments.Max(segment => segment.From.Y.Nanometres) - front;
        return [.. Enumerable.Range(1, count).Select(i => Across(segments, front + (long)((Int128)depth * i / (count + 1))))];
    }

    private static (Point Left, Point Right) Across(Segment[] segments, long level)
    {
        var line = new CrossingLine(IsPlumb: false, Length.FromNanometres(level));
        var crossings = new List<Point>();
        foreach (Segment segment in segments)
        {
            crossings.AddRange(SegmentCrossing.Parts(segment, line).Skip(1).Select(part => part.From));
            if (line.IsAllButOn(segment.From))
            {
                crossings.Add(segment.From);
            }
        }

        return (crossings.MinBy(point => point.X), crossings.MaxBy(point => point.X));
    }
}
