using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Scenes;

/// <summary>A sheet over top, front and underside, a panel at each side and the closure's section at the back.</summary>
internal static class WaterfallPlacing
{
    // What of the sheet is on a face, and not on the front: between the square front's corners or the nose's ends.
    private static readonly ImmutableArray<EdgeWord> Faces = [EdgeWord.Bottom, EdgeWord.Top];

    /// <summary>Places the panels.</summary>
    /// <param name="places">Takes the places; the construction is a waterfall.</param>
    public static void Add(Placings places)
    {
        double width = Placings.Mm(places.Cushion.Width),
            depth = Placings.Mm(places.Cushion.Depth);
        foreach (Panel panel in places.Whole.Panels)
        {
            if (panel.Part.Kind == PartKind.Main)
            {
                places.Add(panel, [.. Sheet(places, panel)]);
            }
            else if (panel.Part == PartName.Side(EdgeName.Right))
            {
                places.Add(panel, new Placing(new PlaneSurface(new(width, 0, 0), Vector.Back, Vector.Up, Vector.Right), PatchKind.Wall));
            }
            else if (panel.Part == PartName.Side(EdgeName.Left))
            {
                places.Add(panel, new Placing(new PlaneSurface(new(0, depth, 0), -Vector.Back, Vector.Up, -Vector.Right), PatchKind.Wall));
            }
            else if (panel.Role == Specifications.Fabrics.FabricRole.Sides)
            {
                OutlineSide rear = places.Cushion.Outline.Sides.First(run => run.Side == Side.Back);
                double low = panel.Part.Kind is PartKind.ZipperUpper or PartKind.ClosureUpper
                    ? Placings.Mm(places.Cushion.Thickness - panel.Height)
                    : 0;
                places.Add(panel, new Placing(BoxPlacing.Wall(rear.Path, low), PatchKind.Wall));
            }
        }
    }

    // Along the right side's outline from the underside's back, round the front, to the top's back; that side's x runs to the back.
    private static IEnumerable<Placing> Sheet(Placings places, Panel main)
    {
        Panel side = places.Whole[PartName.Side(EdgeName.Right)];
        ImmutableArray<Edge> walk =
        [
            side[new EdgeName(EdgeWord.Bottom)],
            side[EdgeName.Front.With(EdgeWord.Lower)],
            side[EdgeName.Front.With(EdgeWord.Upper)],
            side[new EdgeName(EdgeWord.Top)],
        ];
        ImmutableArray<Segment> path =
        [
            .. walk.SelectMany(edge => edge.Path.Reverse()).Select(segment => new Segment(segment.To, segment.From, -segment.Sweep)),
        ];
        var surface = new SweptSurface(new SurfacePath(path), new PlaneSurface(default, Vector.Back, Vector.Up, Vector.Right), Vector.Right)
        {
            IsUpright = true,
        };
        double at = 0,
            width = Placings.Mm(main.Width);
        foreach (Edge edge in walk)
        {
            double from = at;
            at += Placings.Mm(edge.Length);
            yield return new Placing(
                surface,
                Faces.Contains(edge.Name.Last) ? PatchKind.Face : PatchKind.Wall,
                new PlanePoint(0, from),
                new PlanePoint(width, at)
            );
        }
    }
}
