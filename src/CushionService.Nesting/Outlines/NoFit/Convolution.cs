namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>The convolution of a lying outline with the point reflection of a moving one. The winding number of the
/// closed curves that it is made of is above 0 exactly at the offsets (moving minus lying) where the two overlap
/// (Guibas, Ramshaw and Stolfi, "A kinetic framework for computational geometry", 1983).
/// Parallel edges are kept apart by thinking of the lying outline as turned by an infinitesimal angle counter-clockwise.</summary>
internal static class Convolution
{
    /// <summary>Traces the convolution.</summary>
    /// <param name="lying">The outline that lies still.</param>
    /// <param name="moving">The outline that moves.</param>
    /// <param name="segments">Takes the segments, in no order; emptied first.</param>
    public static void Trace(OutlineShape lying, OutlineShape moving, List<ConvolutionSegment> segments)
    {
        segments.Clear();
        var a = lying.Corners;
        var b = Array.ConvertAll(moving.Corners, corner => new GridPoint(-corner.X, -corner.Y));
        for (var edge = 0; edge < a.Length; edge++)
        {
            for (var corner = 0; corner < b.Length; corner++)
            {
                Add(segments, a, edge, b, corner, edgeIsAhead: true);
            }
        }

        for (var edge = 0; edge < b.Length; edge++)
        {
            for (var corner = 0; corner < a.Length; corner++)
            {
                Add(segments, b, edge, a, corner, edgeIsAhead: false);
            }
        }
    }

    /// <summary>Adds the edge, moved to the corner, if its direction lies in the turn that the boundary makes there.</summary>
    /// <param name="segments">Takes the segment.</param>
    /// <param name="edges">Corners of the polygon whose edge it is.</param>
    /// <param name="edge">Index of the edge, by its first corner.</param>
    /// <param name="corners">Corners of the other polygon.</param>
    /// <param name="corner">Index of the corner.</param>
    /// <param name="edgeIsAhead">Whether the edge is of the lying outline, which counts as turned a little
    /// counter-clockwise.</param>
    private static void Add(
        List<ConvolutionSegment> segments,
        GridPoint[] edges,
        int edge,
        GridPoint[] corners,
        int corner,
        bool edgeIsAhead
    )
    {
        var (from, to) = (edges[edge], edges[edge + 1 == edges.Length ? 0 : edge + 1]);
        var here = corners[corner];
        var before = corners[corner == 0 ? corners.Length - 1 : corner - 1];
        var after = corners[corner + 1 == corners.Length ? 0 : corner + 1];
        var (directionX, directionY) = (to.X - from.X, to.Y - from.Y);
        // Cross products: how the edge's direction lies beside the edges that come into the corner and
        // leave it. Coordinates within 2^30 keep them within 64 bits.
        long fromIncoming = (here.X - before.X) * directionY - (here.Y - before.Y) * directionX;
        long toOutgoing = directionX * (after.Y - here.Y) - directionY * (after.X - here.X);
        // Straight corners are no left turns here; the ends of their turn coincide, so that neither branch adds anything.
        bool left = (here.X - before.X) * (after.Y - here.Y) - (here.Y - before.Y) * (after.X - here.X) > 0;
        if (left && (edgeIsAhead ? fromIncoming >= 0 && toOutgoing > 0 : fromIncoming > 0 && toOutgoing >= 0))
        {
            segments.Add(new(from.X + here.X, from.Y + here.Y, to.X + here.X, to.Y + here.Y));
        }
        // At a corner that turns right the curve is passed backwards, which lowers the winding number.
        else if (!left && (edgeIsAhead ? toOutgoing <= 0 && fromIncoming < 0 : toOutgoing < 0 && fromIncoming <= 0))
        {
            segments.Add(new(to.X + here.X, to.Y + here.Y, from.X + here.X, from.Y + here.Y));
        }
    }
}
