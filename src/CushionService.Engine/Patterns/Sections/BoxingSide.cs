using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>The strip of a boxing that covers a side.</summary>
/// <param name="Part">The strip's panel.</param>
/// <param name="Middle">Where the middle of the side's longest stretch lies along it.</param>
/// <param name="Length">Finished length of that stretch.</param>
internal readonly record struct BoxingSide(PartName Part, Length Middle, Length Length)
{
    /// <summary>The single strip over the longest stretch of a side; null where none covers it from top to bottom.</summary>
    public static BoxingSide? Of(Pattern pattern, CushionSpecification cushion, Side side)
    {
        foreach (
            OutlineSide stretch in cushion.Outline.Sides.Where(stretch => stretch.Side == side).OrderByDescending(stretch => stretch.Length)
        )
        {
            Panel? strip = pattern.Panels.FirstOrDefault(panel =>
                panel.Edges.Any(edge => edge.Name == stretch.Name.With(EdgeWord.Top))
                && panel.Edges.Any(edge => edge.Name == stretch.Name.With(EdgeWord.Bottom))
            );
            if (strip is not null)
            {
                Edge top = strip[stretch.Name.With(EdgeWord.Top)];
                return new BoxingSide(strip.Part, top.Middle.X, top.Length);
            }
        }

        return null;
    }
}
