namespace CushionService.Engine.Scenes;

/// <summary>Where a panel lies on the finished cushion.</summary>
public abstract record Surface
{
    /// <summary>The point of the scene on which a point of the panel lies.</summary>
    /// <param name="point">In the coordinates of the whole panel, in millimetres.</param>
    public abstract Vector At(PlanePoint point);

    /// <summary>The direction away from the filling there, one long.</summary>
    /// <param name="point">In the coordinates of the whole panel, in millimetres.</param>
    public abstract Vector Normal(PlanePoint point);

    /// <summary>Where it bends, as distances along the panel, rising; empty when it is flat.</summary>
    public virtual IReadOnlyList<SurfaceBend> Bends => [];

    /// <summary>Whether it bends along the panel's y, and not along its x.</summary>
    public virtual bool BendsAlongY => false;

    /// <summary>How far a point is along the direction in which it bends.</summary>
    /// <param name="point">In the coordinates of the whole panel, in millimetres.</param>
    public double DistanceTo(PlanePoint point) => BendsAlongY ? point.Y : point.X;

    /// <summary>The points of a line with those at which the surface bends between them; the first and the last too.</summary>
    /// <param name="line">Points on the whole panel.</param>
    /// <param name="closed">Whether a line runs from the last point to the first, too.</param>
    public List<PlanePoint> Bent(IReadOnlyList<PlanePoint> line, bool closed = false)
    {
        var points = new List<PlanePoint>(line.Count);
        int count = closed ? line.Count : line.Count - 1;
        for (var i = 0; i < count; i++)
        {
            (PlanePoint from, PlanePoint to) = (line[i], line[(i + 1) % line.Count]);
            points.Add(from);
            (double a, double b) = (DistanceTo(from), DistanceTo(to));
            int step = b > a ? 1 : -1;
            for (int j = step > 0 ? 0 : Bends.Count - 1; j >= 0 && j < Bends.Count && Math.Abs(b - a) > 1e-6; j += step)
            {
                double share = (Bends[j].At - a) / (b - a);
                // A bend at an end of the line is that end already.
                if (share is > 1e-6 and < 1 - 1e-6)
                {
                    points.Add(from + (share * (to - from)));
                }
            }
        }

        if (!closed)
        {
            points.Add(line[^1]);
        }

        return points;
    }
}
