using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Scenes;

/// <summary>A roll that lies along the front: the seam of its body at the back, a half bolster on its straight side.</summary>
internal static class RollPlacing
{
    // As wide as a tied end is drawn to, and as its tail spreads, as shares of the full width (a choice of ours, no source).
    private const double Tied = 0.16;
    private const double Spread = 0.55;

    /// <summary>Places the body and the ends.</summary>
    /// <param name="places">Takes the places; the construction is a bolster.</param>
    public static void Add(Placings places)
    {
        (double across, double high, double length) = (
            Placings.Mm(places.Cushion.Width),
            Placings.Mm(places.Cushion.Depth),
            Placings.Mm(places.Cushion.Length)
        );
        PlaneSurface Profile(double x, Vector outward) => new(new Vector(x, across, high), -Vector.Back, -Vector.Up, outward);
        ImmutableArray<Segment> round = [.. places.Cushion.Outline.Sides.SelectMany(side => side.Path)];
        var body = new SweptSurface(new SurfacePath(round), Profile(0, -Vector.Right), Vector.Right);
        foreach (Panel panel in places.Whole.Panels)
        {
            switch (panel.Part.Kind)
            {
                case PartKind.Body when places.Cushion.Ends is { Kind: not BolsterEndKind.Flat } ends:
                    places.Add(panel, [.. Drawn(panel, body, ends, new Vector(0, across / 2, high / 2), length)]);
                    break;
                case PartKind.Body:
                    places.Add(panel, new Placing(body, PatchKind.Wall, default(PlanePoint), new PlanePoint(body.Path.Length, length)));
                    break;
                case PartKind.End when panel.Part.Run == EdgeName.Left:
                    places.Add(panel, new Placing(Profile(0, -Vector.Right), PatchKind.Wall));
                    break;
                case PartKind.End:
                    places.Add(panel, new Placing(Profile(length, Vector.Right), PatchKind.Wall));
                    break;
            }
        }
    }

    // The ends as rings: the middle of a gathered one, the tie of a tied one and the hem of its tail.
    private static IEnumerable<Placing> Drawn(Panel panel, SweptSurface body, BolsterEnds ends, Vector axis, double length)
    {
        double tail = Placings.Mm(ends.Tail),
            beyond = (Placings.Mm(panel.Height) - length) / 2,
            high = Placings.Mm(panel.Height),
            width = body.Path.Length;
        // A gathered end closes to a fiftieth, not to a point, so that its normals stay defined.
        List<(double Y, double X, double Share)> left = tail > 0 ? [(0, -tail, Spread), (tail, 0, Tied)] : [(0, 0, 0.02)];
        left.Add((beyond, 0, 1));
        List<(double Y, double X, double Share)> rings =
        [
            .. left,
            .. Enumerable.Reverse(left).Select(ring => (high - ring.Y, length - ring.X, ring.Share)),
        ];
        var surface = new DrawnSurface(body, axis, rings);
        for (var i = 0; i + 1 < rings.Count; i++)
        {
            yield return new Placing(surface, PatchKind.Wall, new PlanePoint(0, rings[i].Y), new PlanePoint(width, rings[i + 1].Y));
        }
    }
}
