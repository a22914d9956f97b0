using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>Names the faces of a lopsided cushion on their right sides: the bottom is the mirror image of the top, and another
/// piece.</summary>
internal static class FaceNames
{
    // In nanometres: one inch.
    private const double Inside = 25_400_000;

    /// <summary>Marks the top and the bottom; nothing changes when they are cut the same.</summary>
    /// <param name="pattern">The cover.</param>
    /// <param name="cushion">The cushion; one with a mirror line has faces that are the same piece.</param>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion) =>
        cushion.Outline.IsSymmetric
            ? pattern
            : pattern with
            {
                Panels =
                [
                    .. pattern.Panels.Select(panel => panel.Part == PartName.Top || panel.Part == PartName.Bottom ? Named(panel) : panel),
                ],
            };

    // An inch inside the middle of the front, or of the first edge where no edge is called so.
    private static Panel Named(Panel panel)
    {
        Edge edge = panel.Edges.FirstOrDefault(edge => edge.Name == EdgeName.Front) ?? panel.Edges[0];
        (Point at, double direction) = edge.At(Length.FromNanometres(edge.Length.Nanometres / 2));
        Point within = at.Moved(
            Length.FromNanometres((long)Math.Round(-Inside * Math.Sin(direction))),
            Length.FromNanometres((long)Math.Round(Inside * Math.Cos(direction)))
        );
        MarkPurpose purpose = panel.Part.Kind == PartKind.Top ? MarkPurpose.NameTop : MarkPurpose.NameUnderside;
        return panel with { Marks = panel.Marks.Add(new PanelMark(MarkKind.FaceName, within, null, purpose)) };
    }
}
