using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>Draws in the corners of a knife-edge cushion, so that they do not stand out like ears when it is filled: from a quarter of each
/// side to a point a little in from the corner both ways (common practice, no source). Marked on the top, which is the template for the
/// bottom.</summary>
internal static class CornerTapering
{
    /// <summary>Marks a rectangular top; nothing changes when the corners are not tapered.</summary>
    /// <param name="pattern">The cover.</param>
    /// <param name="cushion">The cushion; its taper is how far in from the corner the lines meet, both ways.</param>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion)
    {
        Length taper = cushion.CornerTaper;
        if (taper == Length.Zero)
        {
            return pattern;
        }

        Panel top = pattern[PartName.Top];
        (Length width, Length depth) = (top.Width, top.Height);
        Length across = Length.FromNanometres(width.Nanometres / 4),
            along = Length.FromNanometres(depth.Nanometres / 4);
        IEnumerable<PanelMark> lines = new[] { (false, false), (true, false), (true, true), (false, true) }.SelectMany(corner =>
        {
            Point At(Length x, Length y) => new(corner.Item1 ? width - x : x, corner.Item2 ? depth - y : y);
            Point point = At(taper, taper);
            return (PanelMark[])[Line(At(across, Length.Zero), point), Line(At(Length.Zero, along), point)];
        });
        return pattern with { Panels = pattern.Panels.Replace(top, top with { Marks = [.. top.Marks, .. lines] }) };
    }

    private static PanelMark Line(Point from, Point to) => new(MarkKind.TaperLine, from, to, MarkPurpose.TaperCorner);
}
