using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>The edge of a face on the longest stretch of a side: of the underside where it has one edge there, else of the top.</summary>
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
            OutlineSide stretch in cushion.Outline.Sides.Where(stretch => stretch.Side == side).OrderByDescending(stretch => stretch.Length)
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
}
