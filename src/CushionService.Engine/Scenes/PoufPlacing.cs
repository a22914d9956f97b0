using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Scenes;

/// <summary>A drum, or gores round its middle; the first gore begins at the back, where the base of gores does.</summary>
internal static class PoufPlacing
{
    /// <summary>Places the top, the wall and the base.</summary>
    /// <param name="places">Takes the places; without gores the top is a disc and the wall one drum.</param>
    public static void Add(Placings places)
    {
        double height = Placings.Mm(places.Cushion.Thickness),
            radius = Placings.Mm(places.Cushion.Width) / 2;
        int gores = places.Cushion.Gores;
        // The panels of a wall follow each other the other way round for one who looks at the base.
        PlaneSurface below =
            gores == 0
                ? BoxPlacing.Above(0) with
                {
                    Outward = -Vector.Up,
                }
                : new PlaneSurface(new Vector(2 * radius, 0, 0), -Vector.Right, Vector.Back, -Vector.Up);
        places.AddBottom(places.Underside, new Placing(below, PatchKind.Face));
        foreach (Panel panel in places.Whole.Panels)
        {
            if (panel.Part == PartName.Top)
            {
                places.Add(panel, new Placing(BoxPlacing.Above(height), PatchKind.Face));
            }
            else if (panel.Part.Kind == PartKind.Gore)
            {
                PlanePoint tip = PlanePoint.Of(panel[EdgeName.Left].From);
                IReadOnlyList<PlanePoint> rim = [.. places.Underside.Select(point => point - new PlanePoint(radius, radius) + tip)];
                places.Add(panel, new Placing(Sector(tip, panel.Part.Number, radius, height, gores), PatchKind.Face) { Rim = rim });
            }
            else if (panel.Part.Kind == PartKind.Wall)
            {
                ImmutableArray<Segment> path =
                    gores == 0 ? [.. places.Cushion.Outline.Sides.SelectMany(side => side.Path)] : Rim(places, panel, radius, gores);
                places.Add(panel, new Placing(BoxPlacing.Wall(BoxPlacing.Round(places.Whole, panel, path), 0), PatchKind.Wall));
            }
        }
    }

    // In radians, counter-clockwise from the right: gore 1 begins at a quarter of a turn, at the back.
    private static double TurnOf(int number, int gores) => (Math.PI / 2) + (2 * Math.PI * (number - 1) / gores);

    // Its rim outward, its point in the middle.
    private static PlaneSurface Sector(PlanePoint tip, int number, double radius, double height, int gores)
    {
        double middle = TurnOf(number, gores) + (Math.PI / gores);
        var outward = new Vector(Math.Cos(middle), Math.Sin(middle), 0);
        Vector across = Vector.Up.Cross(outward),
            centre = new(radius, radius, height);
        return new PlaneSurface(centre - (tip.X * across) + (tip.Y * outward), across, -outward, Vector.Up);
    }

    // Two arcs, as the wall panel of a gore is notched in its middle.
    private static ImmutableArray<Segment> Rim(Placings places, Panel wall, double radius, int gores)
    {
        Point At(double turn) =>
            new(
                Length.FromNanometres((long)Math.Round(1e6 * radius * (1 + Math.Cos(turn)))),
                Length.FromNanometres((long)Math.Round(1e6 * radius * (1 + Math.Sin(turn))))
            );
        double from = TurnOf(wall.Part.Number, gores),
            sweep = 2 * Math.PI / gores;
        return [new Segment(At(from), At(from + (sweep / 2)), sweep / 2), new Segment(At(from + (sweep / 2)), At(from + sweep), sweep / 2)];
    }
}
