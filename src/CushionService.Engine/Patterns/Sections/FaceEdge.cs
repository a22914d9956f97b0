using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>The edge of a face on the stretch of a side that runs along it furthest: of the underside where it has one edge there, else
/// of the top.</summary>
internal static class FaceEdge
{
    /// <summary>The edge.</summary>
    /// <param name="pattern">The cover.</param>
    /// <param name="cushion">The cushion, whose outline has the side's stretches.</param>
    /// <param name="side">The side.</param>
    /// <exception cref="InvalidPatternException">No face has an edge on that side.</exception>
    public static EdgeRef Of(Pattern pattern, CushionSpecification cushion, Side side)
    {
        foreach (
            OutlineSide stretch in cushion
                .Outline.Sides.Where(stretch => stretch.Side == side)
                .OrderByDescending(stretch => Along(stretch, side))
                .ThenByDescending(stretch => stretch.Length)
        )
        {
            foreach (PartName part in (PartName[])[PartName.Bottom, PartName.Bottom with { Half = FaceHalf.Back }, PartName.Top])
            {
                if (pattern.Panels.FirstOrDefault(panel => panel.Part == part)?.Edges.Any(edge => edge.Name == stretch.Name) == true)
                {
                    return new EdgeRef(part, stretch.Name);
                }
            }
        }

        throw new InvalidPatternException($"No face has an edge on the {side} side.");
    }

    // A stretch that steps across is of its side by name, and yet does not face that way.
    private static Length Along(OutlineSide stretch, Side side)
    {
        (Point from, Point to) = (stretch.Path[0].From, stretch.Path[^1].To);
        Length along = side is Side.Left or Side.Right ? to.Y - from.Y : to.X - from.X;
        return along < Length.Zero ? Length.Zero - along : along;
    }
}
