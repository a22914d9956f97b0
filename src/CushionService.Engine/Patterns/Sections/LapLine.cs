using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Closures;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>The line that the fold over a lapped zipper comes to.</summary>
internal static class LapLine
{
    /// <summary>Marks the panel that lies under the fold.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="edge">Its straight edge at the zipper; the line lies inward of it.</param>
    /// <param name="closure">The closure; nothing is marked where it is no lapped zipper.</param>
    public static Panel On(Panel panel, Edge edge, ClosureSpecification closure)
    {
        if (closure is not ZipperClosure { Lap: { Nanometres: > 0 } lap })
        {
            return panel;
        }

        // Edges run counter-clockwise, so that inward is to their left.
        double direction = edge.Path[0].StartDirection;
        Length across = Share(-Math.Sin(direction), lap),
            along = Share(Math.Cos(direction), lap);
        return panel with
        {
            Marks =
            [
                .. panel.Marks,
                new PanelMark(MarkKind.StitchLine, edge.From.Moved(across, along), edge.To.Moved(across, along), MarkPurpose.LapZipper),
            ],
        };
    }

    private static Length Share(double share, Length lap) => Length.FromNanometres((long)Math.Round(share * lap.Nanometres));
}
