namespace CushionService.Engine.Scenes;

/// <summary>The body of a roll whose ends are drawn together: round its axis along x, narrower the further it is drawn in.</summary>
/// <param name="Body">The roll, were it as wide all along.</param>
/// <param name="Axis">A point of the axis.</param>
/// <param name="Rings">By the panel's y, rising: where each ring lies along the axis, and its share of the full width.</param>
public sealed record DrawnSurface(SweptSurface Body, Vector Axis, IReadOnlyList<(double Y, double X, double Share)> Rings) : Surface
{
    // In millimetres: the slope is taken over so much to either side.
    private const double Step = 0.1;

    /// <inheritdoc />
    public override IReadOnlyList<SurfaceBend> Bends => Body.Bends;

    /// <inheritdoc />
    public override Vector At(PlanePoint point)
    {
        Vector rim = Body.At(point with { Y = 0 });
        (double x, double share) = Ring(point.Y);
        return new Vector(x, Axis.Y + (share * (rim.Y - Axis.Y)), Axis.Z + (share * (rim.Z - Axis.Z)));
    }

    /// <inheritdoc />
    /// <remarks>By differences, since the rings make no smooth surface.</remarks>
    public override Vector Normal(PlanePoint point)
    {
        Vector round = At(point with { X = point.X + Step }) - At(point with { X = point.X - Step }),
            along = At(point with { Y = point.Y + Step }) - At(point with { Y = point.Y - Step });
        return round.Cross(along).Unit();
    }

    // Straight from ring to ring.
    private (double X, double Share) Ring(double y)
    {
        int i = 0;
        while (i < Rings.Count - 2 && y > Rings[i + 1].Y)
        {
            i++;
        }

        double part = (y - Rings[i].Y) / (Rings[i + 1].Y - Rings[i].Y);
        return (Rings[i].X + (part * (Rings[i + 1].X - Rings[i].X)), Rings[i].Share + (part * (Rings[i + 1].Share - Rings[i].Share)));
    }
}
