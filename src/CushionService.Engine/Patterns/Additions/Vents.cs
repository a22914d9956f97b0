using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns.Additions;

/// <summary>Eyelets that let the air out of coated fabric, evenly along the middle line of a side of the boxing.</summary>
internal static class Vents
{
    /// <summary>Adds their marks.</summary>
    /// <param name="pattern">The cover.</param>
    /// <param name="cushion">The cushion, with at least one vent.</param>
    /// <exception cref="InvalidPatternException">No single strip covers the side that they are on.</exception>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion)
    {
        (int count, Side on) = (cushion.Trim.Vents, cushion.Trim.VentSide);
        BoxingSide side =
            BoxingSide.Of(pattern, cushion, on) ?? throw new InvalidPatternException($"No single panel covers the {on} side for vents.");
        Panel strip = pattern[side.Part];
        IEnumerable<PanelMark> marks = Enumerable
            .Range(1, count)
            .Select(i => new PanelMark(
                MarkKind.Vent,
                new Point(
                    side.Start + Length.FromNanometres((long)((Int128)side.Length.Nanometres * i / (count + 1))),
                    strip.Height.HalfUp()
                ),
                null,
                MarkPurpose.SetEyelet
            ));
        return pattern with { Panels = pattern.Panels.Replace(strip, strip with { Marks = strip.Marks.AddRange(marks) }) };
    }
}
