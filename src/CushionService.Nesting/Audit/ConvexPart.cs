using System.Diagnostics;

namespace CushionService.Nesting.Audit;

/// <summary>A convex polygon: its corners counter-clockwise, within 2^31 of the origin, so that products stay within 64 bits.</summary>
internal sealed class ConvexPart
{
    private readonly GridPoint[] _corners;
    private readonly long _left;
    private readonly long _right;
    private readonly long _lower;
    private readonly long _upper;

    /// <summary>Keeps the corners and their bounding box.</summary>
    /// <param name="corners">Three at least, counter-clockwise, none turning right.</param>
    public ConvexPart(GridPoint[] corners)
    {
        Debug.Assert(corners.Length >= 3, "a part has an area");
        _corners = corners;
        (_left, _right) = (corners.Min(corner => corner.X), corners.Max(corner => corner.X));
        (_lower, _upper) = (corners.Min(corner => corner.Y), corners.Max(corner => corner.Y));
    }

    /// <summary>Whether the interiors meet when the other is moved by the offset. Two convex polygons are apart exactly when the line of
    /// an edge of one has all of the other on its outer side (the separating axis theorem, after Minkowski).</summary>
    /// <param name="other">The other part.</param>
    /// <param name="dx">Offset across, grid units.</param>
    /// <param name="dy">Offset along, grid units.</param>
    /// <returns>Whether they share area; touching along an edge or at a corner is not
    /// sharing.</returns>
    public bool Meets(ConvexPart other, long dx, long dy) =>
        other._left + dx < _right
        && _left < other._right + dx
        && other._lower + dy < _upper
        && _lower < other._upper + dy
        && !IsPartedFrom(other, dx, dy)
        && !other.IsPartedFrom(this, -dx, -dy);

    /// <summary>Whether the line of one of its own edges parts the two.</summary>
    /// <param name="other">The other part.</param>
    /// <param name="dx">Its offset across, grid units.</param>
    /// <param name="dy">Its offset along, grid units.</param>
    /// <remarks>For convex polygons it is enough to try the edges of both: the separating line can be
    /// turned until it lies along one.</remarks>
    private bool IsPartedFrom(ConvexPart other, long dx, long dy)
    {
        var a = _corners[^1];
        foreach (var b in _corners)
        {
            var (alongX, alongY) = (b.X - a.X, b.Y - a.Y);
            var (fromX, fromY) = (dx - a.X, dy - a.Y);
            var inside = false;
            foreach (var corner in other._corners)
            {
                // Above 0 left of the edge, where this part lies.
                if (alongX * (corner.Y + fromY) > alongY * (corner.X + fromX))
                {
                    inside = true;
                    break;
                }
            }

            if (!inside)
            {
                return true;
            }

            a = b;
        }

        return false;
    }
}
