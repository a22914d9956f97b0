using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Scenes;

/// <summary>Two sheets without a boxing: flat ones that the filling rounds up, or larger ones whose edges come down to the seam.</summary>
internal static class SheetPlacing
{
    /// <summary>Places both sheets.</summary>
    /// <param name="places">Takes the places; any construction of two sheets.</param>
    public static void Add(Placings places)
    {
        CushionSpecification cushion = places.Cushion;
        Panel top = places.Whole[PartName.Top];
        switch (cushion.Construction)
        {
            case Construction.Mitred or Construction.GatheredCorner:
                // Each sheet covers its face and half of every side, so the seam runs round the middle of the thickness.
                double half = Placings.Mm(cushion.Thickness) / 2;
                bool gathers = cushion.Construction == Construction.GatheredCorner;
                places.Add(top, [.. Box(cushion, half, 1, gathers)]);
                places.AddBottom(PlanePolygon.Of(top.Edges), [.. Box(cushion, half, -1, gathers)]);
                break;
            case Construction.Flanged:
                places.Add(top, [.. Flanged(places, top, 1)]);
                places.AddBottom(PlanePolygon.Of(top.Edges), [.. Flanged(places, top, -1)]);
                break;
            default:
                places.Add(top, new Placing(BoxPlacing.Above(0), PatchKind.Pillow));
                places.AddBottom(places.Underside, new Placing(places.Below(0), PatchKind.Pillow));
                break;
        }
    }

    // A face as large as the cushion, and a flap at each side as high as half of it; the seam is in the middle of the sides.
    // The sheet's own coordinates begin at its cut corner, half a thickness outside the face. Way is 1 for the upper
    // sheet, −1 for the lower one.
    private static IEnumerable<Placing> Box(CushionSpecification cushion, double half, int way, bool gathers)
    {
        (double width, double depth) = (Placings.Mm(cushion.Width), Placings.Mm(cushion.Depth));
        Vector rise = way * half * Vector.Up,
            up = way * Vector.Up,
            level = half * Vector.Up + rise;
        (double left, double right, double front, double back) = (half, half + width, half, half + depth);
        yield return new Placing(
            new PlaneSurface(level - new Vector(half, half, 0), Vector.Right, Vector.Back, up),
            PatchKind.Face,
            new(left, front),
            new(right, back)
        );
        // Gathers bring a flap to all of its corners, though the sheet's own are round.
        Placing Flap(Vector origin, Vector across, Vector along, Vector outward, PlanePoint low, PlanePoint high) =>
            new(new PlaneSurface(origin, across, along, outward), PatchKind.Wall, low, high) { IsFull = gathers };
        Vector seam = half * Vector.Up;
        yield return Flap(seam - new Vector(half, 0, 0), Vector.Right, up, -Vector.Back, new(left, 0), new(right, front));
        yield return Flap(
            level + new Vector(-half, depth, 0) + (back * up),
            Vector.Right,
            -up,
            Vector.Back,
            new(left, back),
            new(right, back + half)
        );
        yield return Flap(seam - new Vector(0, half, 0), up, Vector.Back, -Vector.Right, new(0, front), new(left, back));
        yield return Flap(
            level + new Vector(width, -half, 0) + (right * up),
            -up,
            Vector.Back,
            Vector.Right,
            new(right, front),
            new(right + half, back)
        );
        foreach (Placing corner in gathers ? Corners(width, depth, half, seam, rise) : [])
        {
            yield return corner;
        }
    }

    // The sheet's corners have the cushion's thickness as their radius. Each is drawn up round its corner of the cushion.
    private static IEnumerable<Placing> Corners(double width, double depth, double half, Vector seam, Vector rise)
    {
        double radius = 2 * half;
        (Vector At, Vector Before, PlanePoint Way)[] corners =
        [
            (default, -Vector.Back, new(-1, -1)),
            (new Vector(width, 0, 0), Vector.Right, new(1, -1)),
            (new Vector(width, depth, 0), Vector.Back, new(1, 1)),
            (new Vector(0, depth, 0), -Vector.Right, new(-1, 1)),
        ];
        foreach ((Vector at, Vector before, PlanePoint way) in corners)
        {
            // In the sheet: the rounded corner's centre, and the corner of the square that holds it.
            var centre = new PlanePoint(way.X < 0 ? radius : width, way.Y < 0 ? radius : depth);
            var outer = new PlanePoint(way.X < 0 ? 0 : width + radius, way.Y < 0 ? 0 : depth + radius);
            yield return new Placing(
                new GatheredSurface(
                    centre,
                    radius,
                    at + seam,
                    before,
                    Vector.Up.Cross(before),
                    rise,
                    Math.Atan2(-before.X, before.Y),
                    Math.PI / 2
                ),
                PatchKind.Hidden,
                new PlanePoint(Math.Min(centre.X, outer.X), Math.Min(centre.Y, outer.Y)),
                new PlanePoint(Math.Max(centre.X, outer.X), Math.Max(centre.Y, outer.Y))
            );
        }
    }

    // The body rises; its flange lies flat, of a double one the outer half folded back beneath it.
    private static IEnumerable<Placing> Flanged(Placings places, Panel top, int way)
    {
        CushionSpecification cushion = places.Cushion;
        FlangeSpecification flange = cushion.Flange!;
        double wide = Placings.Mm(flange.Width),
            beyond = flange.Layers == FlangeLayers.Double ? 2 * wide : wide;
        (double width, double depth) = (Placings.Mm(top.Width), Placings.Mm(top.Height));
        var flat = new PlaneSurface(new Vector(-beyond, -beyond, 0), Vector.Right, Vector.Back, way * Vector.Up);
        yield return new Placing(flat, PatchKind.Pillow, new(beyond, beyond), new(width - beyond, depth - beyond));
        double fold = beyond - wide;
        foreach ((PlanePoint low, PlanePoint high) in Frame(fold, beyond, width, depth))
        {
            yield return new Placing(flat, PatchKind.Flange, low, high);
        }

        // The front, back, left and right strips beyond the fold, each mirrored in its fold line.
        if (fold > 0)
        {
            Vector Mirrored(double line) => new(2 * line, 0, 0);
            Vector Turned(double line) => new(0, 2 * line, 0);
            (Vector Origin, Vector Across, Vector Along, PlanePoint Low, PlanePoint High)[] folded =
            [
                (Turned(fold - beyond) + new Vector(-beyond, beyond, 0), Vector.Right, -Vector.Back, new(0, 0), new(width, fold)),
                (
                    Turned(depth - fold - beyond) + new Vector(-beyond, beyond, 0),
                    Vector.Right,
                    -Vector.Back,
                    new(0, depth - fold),
                    new(width, depth)
                ),
                (
                    Mirrored(fold - beyond) + new Vector(beyond, -beyond, 0),
                    -Vector.Right,
                    Vector.Back,
                    new(0, fold),
                    new(fold, depth - fold)
                ),
                (
                    Mirrored(width - fold - beyond) + new Vector(beyond, -beyond, 0),
                    -Vector.Right,
                    Vector.Back,
                    new(width - fold, fold),
                    new(width, depth - fold)
                ),
            ];
            foreach ((Vector origin, Vector across, Vector along, PlanePoint low, PlanePoint high) in folded)
            {
                yield return new Placing(new PlaneSurface(origin, across, along, -way * Vector.Up), PatchKind.Hidden, low, high);
            }
        }
    }

    // Four bars round the body, the front and the back one as wide as the whole.
    private static IEnumerable<(PlanePoint Low, PlanePoint High)> Frame(double outer, double inner, double width, double depth) =>
        [
            (new(outer, outer), new(width - outer, inner)),
            (new(outer, depth - inner), new(width - outer, depth - outer)),
            (new(outer, inner), new(inner, depth - inner)),
            (new(width - inner, inner), new(width - outer, depth - inner)),
        ];
}
