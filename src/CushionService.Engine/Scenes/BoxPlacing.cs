using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Scenes;

/// <summary>A box, upright or sloping: each strip of the boxing follows the runs of the seam line that its edges are named by.</summary>
internal static class BoxPlacing
{
    /// <summary>Places the faces and the boxing.</summary>
    /// <param name="places">Takes the places; its construction is a box or a wedge.</param>
    /// <remarks>A wedge's wall is swept with its full height everywhere: each panel's own outline cuts it down to the
    /// slope.</remarks>
    public static void Add(Placings places)
    {
        bool slopes = places.Cushion.Construction == Construction.Wedge;
        double height = Placings.Mm(slopes ? places.Cushion.Thickness : places.Cushion.BoxingHeight);
        Panel top = places.Whole[PartName.Top];
        places.Add(top, new Placing(slopes ? Slope(places, top, height) : Above(height), PatchKind.Face));
        places.AddBottom(places.Underside, new Placing(places.Below(0), PatchKind.Face));
        ImmutableArray<(EdgeName Name, ImmutableArray<Segment> Path)> runs = slopes
            ? [.. places.Cushion.Outline.Sides.Select(side => (side.Name, side.Path))]
            : [.. top.Edges.Select(edge => (edge.Name, edge.Path))];
        foreach (Panel panel in places.Whole.Panels)
        {
            ImmutableArray<Segment> path = Round(places.Whole, panel, PathOf(panel, runs));
            if (!path.IsEmpty)
            {
                // The upper strip of a divided boxing hangs from the top; all others start at the underside.
                double low = panel.Part.Kind is PartKind.ZipperUpper or PartKind.ClosureUpper ? height - Placings.Mm(panel.Height) : 0;
                places.Add(panel, new Placing(Wall(path, low), PatchKind.Wall));
            }
        }
    }

    /// <summary>A face seen from above.</summary>
    /// <param name="height">Of the face over the underside, in millimetres.</param>
    public static PlaneSurface Above(double height) => new(new Vector(0, 0, height), Vector.Right, Vector.Back, Vector.Up);

    /// <summary>A strip along a path of the outline, its lower edge at a height.</summary>
    /// <param name="path">Lines and arcs seen from above, counter-clockwise.</param>
    /// <param name="low">Height of the strip's lower edge, in millimetres.</param>
    public static SweptSurface Wall(ImmutableArray<Segment> path, double low) => new(new SurfacePath(path), Above(low), Vector.Up);

    // The runs along a strip, from left to right.
    private static ImmutableArray<Segment> PathOf(Panel panel, ImmutableArray<(EdgeName Name, ImmutableArray<Segment> Path)> runs)
    {
        if (panel.Role != Specifications.Fabrics.FabricRole.Sides)
        {
            return [];
        }

        IEnumerable<(Measures.Length X, ImmutableArray<Segment> Path)> found =
            from run in runs
            // A strip's edges carry the name of the run that they are sewn to; the lower edge is asked first, for the
            // strips of a divided boxing.
            let edge = Placings.Find(panel, run.Name.With(EdgeWord.Bottom)) ?? Placings.Find(panel, run.Name.With(EdgeWord.Top))
            where edge is not null
            select (Measures.Length.Min(edge.From.X, edge.To.X), run.Path);
        return [.. found.OrderBy(run => run.X.Nanometres).SelectMany(run => run.Path)];
    }

    /// <summary>The path of a loop twice round: its panels may begin anywhere on it.</summary>
    /// <param name="pattern">The pattern as drafted.</param>
    /// <param name="strip">A strip along the path.</param>
    /// <param name="path">The path, from where the strip begins.</param>
    public static ImmutableArray<Segment> Round(Pattern pattern, Panel strip, ImmutableArray<Segment> path) =>
        LoopStart.IsLoop(pattern, strip) ? [.. path, .. path] : path;

    // From the front's height up to the back's.
    private static PlaneSurface Slope(Placings places, Panel top, double rear)
    {
        double front = Placings.Mm(places.Cushion.FrontThickness);
        var up = new Vector(0, Placings.Mm(places.Cushion.Depth), rear - front);
        Vector along = 1 / Placings.Mm(top.Height) * up;
        return new PlaneSurface(new Vector(0, 0, front), Vector.Right, along, Vector.Right.Cross(along));
    }
}
