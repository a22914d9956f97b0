using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>The strip of a boxing that covers a side.</summary>
/// <param name="Part">The strip's panel.</param>
/// <param name="Start">Where the side's longest stretch starts along it.</param>
/// <param name="Length">Finished length of that stretch, less what a closure takes from it round the corner.</param>
/// <param name="SideMiddle">Where the middle of the stretch lies, with what the closure takes.</param>
internal readonly record struct BoxingSide(PartName Part, Length Start, Length Length, Length SideMiddle)
{
    /// <summary>Where the middle of a thing lies that is sewn onto the side: in the side's middle, or as near to it as the strip
    /// reaches.</summary>
    /// <param name="width">Finished width of the thing.</param>
    /// <remarks>Common practice, no source.</remarks>
    public Length MiddleFor(Length width)
    {
        Length half = width.HalfUp();
        return half + half > Length ? Start + Length.HalfUp() : Length.Max(Start + half, Length.Min(SideMiddle, Start + Length - half));
    }

    /// <summary>The single strip over the longest stretch of a side; null where none covers it from top to bottom.</summary>
    /// <param name="pattern">The cover, before strips are joined.</param>
    /// <param name="cushion">The cushion, whose outline has the side's stretches.</param>
    /// <param name="side">The side.</param>
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
                Length start = Length.Min(top.From.X, top.To.X);
                return new BoxingSide(
                    strip.Part,
                    start,
                    top.Length,
                    start + stretch.Length.HalfUp() - TakenBefore(stretch, stretch.Length - top.Length, cushion)
                );
            }
        }

        return null;
    }

    // A closure takes from the end of the stretch that meets its side: from the start, the end, or as much from both.
    private static Length TakenBefore(OutlineSide stretch, Length taken, CushionSpecification cushion)
    {
        int count = cushion.Outline.Sides.Length,
            at = cushion.Outline.Sides.IndexOf(stretch);
        bool before = cushion.Outline.Sides[(at + count - 1) % count].Side == cushion.Closure.Side,
            after = cushion.Outline.Sides[(at + 1) % count].Side == cushion.Closure.Side;
        return !before ? Length.Zero
            : after ? taken.HalfUp()
            : taken;
    }
}
