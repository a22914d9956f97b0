namespace CushionService.Documents.Drawings;

/// <summary>Which way is in, from a point on or near an outline.</summary>
internal static class NearestEdge
{
    /// <summary>The direction across the nearest edge, towards the inside, one long.</summary>
    /// <param name="outline">Corners in either sense; no two neighbours are equal.</param>
    /// <param name="at">In the same coordinates.</param>
    public static Spot Inward(ReadOnlySpan<Spot> outline, Spot at)
    {
        (Spot best, double nearest) = (new Spot(0, 1), double.PositiveInfinity);
        Spot from = outline[^1];
        foreach (Spot to in outline)
        {
            Spot edge = to - from;
            Spot towards = at - from;
            double share = Math.Clamp((towards.X * edge.X + towards.Y * edge.Y) / (edge.X * edge.X + edge.Y * edge.Y), 0, 1);
            double distance = (towards - share * edge).Size;
            if (distance < nearest)
            {
                (best, nearest) = (edge.Unit().Turned(), distance);
            }

            from = to;
        }

        return Winding(outline) > 0 ? best : -1 * best;
    }

    // Twice the signed area: positive when the inside lies to the side that Turned points to.
    private static double Winding(ReadOnlySpan<Spot> outline)
    {
        double sum = 0;
        Spot from = outline[^1];
        foreach (Spot to in outline)
        {
            sum += from.X * to.Y - to.X * from.Y;
            from = to;
        }

        return sum;
    }
}
