using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>A lapped zipper in a seam: its edges are cut with the zipper's turn-under, so that the fold that covers it has fabric to be
/// stitched to.</summary>
internal static class LappedZipper
{
    /// <summary>Widens the allowance on both sides of the zipper's seam; nothing changes for a centred one, or one in a section of its
    /// own.</summary>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion)
    {
        if (cushion.Closure is not ZipperClosure { Lap.Nanometres: > 0 } zipper)
        {
            return pattern;
        }

        HashSet<EdgeRef> edges =
        [
            .. pattern.Seams.Where(seam => seam.Kind == SeamKind.Zipper).SelectMany(seam => seam.One.Concat(seam.Other)),
        ];
        Edge Widened(Panel panel, Edge edge) =>
            edge.Finish.Kind == FinishKind.Seam && edges.Contains(new EdgeRef(panel.Part, edge.Name))
                ? edge with
                {
                    Finish = EdgeFinish.Seam(Length.Max(edge.Finish.Depth, zipper.TurnUnder)),
                }
                : edge;
        return pattern with
        {
            Panels = [.. pattern.Panels.Select(panel => panel with { Edges = [.. panel.Edges.Select(edge => Widened(panel, edge))] })],
        };
    }
}
