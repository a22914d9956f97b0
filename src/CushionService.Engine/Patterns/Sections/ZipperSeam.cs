using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>A zipper in a seam between two faces: marks where it starts and stops, and, where a fold covers it, an allowance deep enough to
/// be stitched to and the line of that stitching.</summary>
/// <remarks>The zipper is shorter than its side by what is kept closed, half at each end (common practice, no source).</remarks>
internal static class ZipperSeam
{
    /// <summary>The pattern with its marks and allowances; unchanged where no zipper is in a seam.</summary>
    /// <param name="pattern">The faces and the seams between them.</param>
    /// <param name="cushion">The cushion.</param>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion)
    {
        if (cushion.Closure is not ZipperClosure zipper)
        {
            return pattern;
        }

        HashSet<EdgeRef> edges =
        [
            .. pattern
                .Seams.Where(seam => seam.Kind == SeamKind.Zipper)
                .SelectMany(seam => seam.One.Concat(seam.Other))
                .Where(edge => pattern[edge.Part][edge.Edge].Finish.Kind == FinishKind.Seam),
        ];
        return edges.Count == 0
            ? pattern
            : pattern with
            {
                Panels = [.. pattern.Panels.Select(panel => Marked(panel, edges, cushion, zipper))],
            };
    }

    private static Panel Marked(Panel panel, HashSet<EdgeRef> edges, CushionSpecification cushion, ZipperClosure zipper)
    {
        ImmutableArray<Edge> opening = Run(panel, edges);
        if (opening.IsEmpty)
        {
            return panel;
        }

        Length side = opening.Aggregate(Length.Zero, (sum, edge) => sum + edge.Length),
            kept = Length.FromNanometres(cushion.Practice.Closures.ZipperKeptClosed.Nanometres / 2);
        (Point start, Point stop) = (At(opening, kept), At(opening, side - kept));
        var marks = ImmutableArray.CreateBuilder<PanelMark>();
        marks.AddRange(panel.Marks);
        marks.Add(new PanelMark(MarkKind.ZipperStop, start, null, MarkPurpose.StopZipper));
        marks.Add(new PanelMark(MarkKind.ZipperStop, stop, null, MarkPurpose.StopZipper));
        if (zipper.Lap == Length.Zero)
        {
            return panel with { Marks = marks.ToImmutable() };
        }

        // The upper face laps over, and is stitched on this line; a curved opening has none, for the gauge on the foot guides it.
        if (panel.Part.Kind == PartKind.Top && opening is [{ Path: [{ IsStraight: true } line] }])
        {
            Length across = Inward(-Math.Sin(line.StartDirection), zipper.Lap),
                along = Inward(Math.Cos(line.StartDirection), zipper.Lap);
            marks.Add(new PanelMark(MarkKind.StitchLine, start.Moved(across, along), stop.Moved(across, along), MarkPurpose.LapZipper));
        }

        return panel with
        {
            Marks = marks.ToImmutable(),
            Edges = [.. panel.Edges.Select(edge => opening.Contains(edge) ? Deepened(edge, zipper) : edge)],
        };
    }

    private static Edge Deepened(Edge edge, ZipperClosure zipper) =>
        edge with
        {
            Finish = EdgeFinish.Seam(Length.Max(edge.Finish.Depth, zipper.TurnUnder)),
        };

    // The panel's edges along the zipper, from the one that none of them comes before.
    private static ImmutableArray<Edge> Run(Panel panel, HashSet<EdgeRef> edges)
    {
        int count = panel.Edges.Length;
        bool Opens(int i) => edges.Contains(new EdgeRef(panel.Part, panel.Edges[(i + count) % count].Name));
        for (var first = 0; first < count; first++)
        {
            if (Opens(first) && !Opens(first - 1))
            {
                return [.. Enumerable.Range(first, count).TakeWhile(Opens).Select(i => panel.Edges[i % count])];
            }
        }

        return [];
    }

    private static Point At(ImmutableArray<Edge> run, Length distance)
    {
        foreach (Edge edge in run)
        {
            if (distance <= edge.Length)
            {
                return edge.At(Length.Max(distance, Length.Zero)).Point;
            }

            distance -= edge.Length;
        }

        return run[^1].To;
    }

    private static Length Inward(double share, Length lap) => Length.FromNanometres((long)Math.Round(share * lap.Nanometres));
}
