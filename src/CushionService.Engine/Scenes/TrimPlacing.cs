using CushionService.Engine.Geometry;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Scenes;

/// <summary>What reaches out from the seams of a cover: flanges and ruffles.</summary>
internal static class TrimPlacing
{
    /// <summary>Places the strips of the edging, once the cover's own panels have their places.</summary>
    /// <param name="places">Holds the cover's panels: strips lie along seams of panels that have a place.</param>
    public static void Add(Placings places)
    {
        switch (places.Cushion.Trim.Edging)
        {
            case FlangeStripSpecification flange:
                foreach (Panel strip in places.Whole.Panels.Where(panel => panel.Part.Kind == PartKind.Flange))
                {
                    places.Add(strip, [.. Folded(places, strip, Placings.Mm(flange.Depth))]);
                }

                break;
            case RuffleSpecification ruffle:
                foreach (Panel strip in places.Whole.Panels.Where(panel => panel.Part.Kind == PartKind.Ruffle))
                {
                    EdgingLoop loop = EdgingLoop.Of(places.Whole, strip.Part.Place ?? ruffle.At[0]);
                    places.Add(strip, new Placing(Gathered(places, loop, ruffle), PatchKind.Ruffle));
                }

                break;
        }
    }

    // The half below the fold lies on top, the other comes back beneath it.
    private static IEnumerable<Placing> Folded(Placings places, Panel strip, double depth)
    {
        ScenePart top = places.Of(places.Whole[PartName.Top], places.Whole.Panels)!;
        Edge side = top.Panel[strip.Part.Run];
        (Vector from, Vector to) = (top.At(side.From), top.At(side.To));
        Vector along = (to - from).Unit(),
            normal = top.Patches[0].Surface.Normal(default),
            outward = along.Cross(normal),
            origin = from - (PlanePoint.Of(strip[EdgeName.Inner].From).X * along);
        double width = Placings.Mm(strip.Width);
        yield return new Placing(
            new PlaneSurface(origin, along, outward, normal),
            PatchKind.Flange,
            default(PlanePoint),
            new PlanePoint(width, depth)
        );
        yield return new Placing(
            new PlaneSurface(origin + (2 * depth * outward), along, -outward, -normal),
            PatchKind.Hidden,
            new PlanePoint(0, depth),
            new PlanePoint(width, 2 * depth)
        );
    }

    private static RuffleSurface Gathered(Placings places, EdgingLoop loop, RuffleSpecification ruffle)
    {
        SceneLine[] lines = Chained([.. loop.Edges.Select(edge => places.Of(places.Whole[edge.Part], places.Whole.Panels)!.LineOf(edge))]);
        Vector[] line = [.. lines.SelectMany(edge => edge.Points)],
            outward = [.. SceneLine.OutwardOf(lines).SelectMany(edge => edge)];
        double fullness = (double)ruffle.Fullness.Numerator / (double)ruffle.Fullness.Denominator;
        return new RuffleSurface(line, outward, fullness, Placings.Mm(ruffle.Depth));
    }

    // Each followed by the one that begins where it ends: the seams of a mirrored face are listed the other way round than its edges run.
    private static SceneLine[] Chained(List<SceneLine> lines)
    {
        var chain = new List<SceneLine> { lines[0] };
        lines.RemoveAt(0);
        while (lines.Count > 0)
        {
            SceneLine next = lines.MinBy(line => (line.Points[0] - chain[^1].Points[^1]).Size)!;
            chain.Add(next);
            lines.Remove(next);
        }

        return [.. chain];
    }
}
