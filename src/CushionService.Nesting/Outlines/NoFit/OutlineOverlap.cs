namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>Whether the interiors of two simple polygons meet, exactly: touching is allowed, a sliver is not. It uses
/// nothing of the search: no convolution, no slices, no floating point. Interiors meet when two edges cross properly, or
/// when a stretch of one boundary between the other's corners lies inside the other, or runs along it the same way.</summary>
internal sealed class OutlineOverlap
{
    // The cuts of one edge in order along it; kept between calls, so that a test allocates nothing.
    private readonly List<GridPoint> _cuts = [];

    /// <param name="first">Corners counter-clockwise, as placed; coordinates within 2^60.</param>
    /// <param name="second">The other polygon, likewise.</param>
    /// <returns>False when they touch at most. Boxes are looked at first, so that outlines far from each other cost
    /// little.</returns>
    public bool InteriorsMeet(ReadOnlySpan<GridPoint> first, ReadOnlySpan<GridPoint> second) =>
        PointBox.Of(first).Meets(PointBox.Of(second))
        && (EdgesCross(first, second) || StretchInside(first, second) || StretchInside(second, first));

    /// <summary>Whether an edge of one crosses an edge of the other, each between its ends.</summary>
    /// <param name="first">Corners counter-clockwise.</param>
    /// <param name="second">Likewise.</param>
    /// <returns>False also when an end of one lies on the other: what happens there is for <see cref="StretchInside"/> to
    /// say.</returns>
    private static bool EdgesCross(ReadOnlySpan<GridPoint> first, ReadOnlySpan<GridPoint> second)
    {
        var bounds = PointBox.Of(second);
        for (var edge = 0; edge < first.Length; edge++)
        {
            var (a, b) = (first[edge], first[(edge + 1) % first.Length]);
            var box = PointBox.Of(a, b);
            if (!box.Touches(bounds))
            {
                continue;
            }

            for (var other = 0; other < second.Length; other++)
            {
                var (c, d) = (second[other], second[(other + 1) % second.Length]);
                if (box.Touches(PointBox.Of(c, d)) && Side(a, b, c) * Side(a, b, d) < 0 && Side(c, d, a) * Side(c, d, b) < 0)
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Cuts every edge of the first at the second's corners and looks where the middle of each stretch lies.</summary>
    /// <returns>Whether a stretch lies inside the second, or runs along its boundary with the insides
    /// on the same side.</returns>
    /// <param name="first">The polygon whose boundary is walked.</param>
    /// <param name="second">The polygon that may hold a stretch of it.</param>
    private bool StretchInside(ReadOnlySpan<GridPoint> first, ReadOnlySpan<GridPoint> second)
    {
        var bounds = PointBox.Of(second);
        for (var edge = 0; edge < first.Length; edge++)
        {
            var (a, b) = (first[edge], first[(edge + 1) % first.Length]);
            var box = PointBox.Of(a, b);
            if (!box.Touches(bounds))
            {
                continue;
            }

            _cuts.Clear();
            _cuts.Add(a);
            foreach (var corner in second)
            {
                if (corner != a && corner != b && box.Touches(PointBox.Of(corner, corner)) && Side(a, b, corner) == 0)
                {
                    _cuts.Add(corner);
                }
            }

            _cuts.Add(b);
            _cuts.Sort(static (one, other) => one.X != other.X ? one.X.CompareTo(other.X) : one.Y.CompareTo(other.Y));
            for (var cut = 0; cut + 1 < _cuts.Count; cut++)
            {
                // The sum of two corners is the middle in half units: no rounding, whatever the parity.
                var middle = new GridPoint(_cuts[cut].X + _cuts[cut + 1].X, _cuts[cut].Y + _cuts[cut + 1].Y);
                if (HoldsDoubled(second, middle, a, b))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Whether a point, given in half units, is inside the polygon, or on an edge that runs like a → b.</summary>
    /// <param name="polygon">Corners counter-clockwise, in whole units.</param>
    /// <param name="point">The point, in half units.</param>
    /// <param name="a">Where the edge begins on which the point lies.</param>
    /// <param name="b">Where it ends.</param>
    private static bool HoldsDoubled(ReadOnlySpan<GridPoint> polygon, GridPoint point, GridPoint a, GridPoint b)
    {
        var inside = false;
        for (var edge = 0; edge < polygon.Length; edge++)
        {
            var (from, to) = (Doubled(polygon[edge]), Doubled(polygon[(edge + 1) % polygon.Length]));
            if (PointBox.Of(from, to).Touches(PointBox.Of(point, point)) && Side(from, to, point) == 0)
            {
                return (Int128)(to.X - from.X) * (b.X - a.X) + (Int128)(to.Y - from.Y) * (b.Y - a.Y) > 0;
            }

            // Counts the edges that a ray to the right crosses; each edge holds its lower end and not
            // its upper one.
            if (from.Y > point.Y != to.Y > point.Y && Side(from, to, point) > 0 == to.Y > from.Y)
            {
                inside = !inside;
            }
        }

        return inside;
    }

    /// <summary>A corner in half units.</summary>
    private static GridPoint Doubled(GridPoint point) => new(2 * point.X, 2 * point.Y);

    /// <summary>1 when c lies left of a → b, −1 right of it, 0 on its line.</summary>
    /// <remarks>128-bit products: coordinates may be doubled and moved, and still be exact.</remarks>
    /// <param name="a">Where the line begins.</param>
    /// <param name="b">A second point of the line, which gives it its direction.</param>
    /// <param name="c">The point asked about.</param>
    private static int Side(GridPoint a, GridPoint b, GridPoint c) =>
        ((Int128)(b.X - a.X) * (c.Y - a.Y)).CompareTo((Int128)(b.Y - a.Y) * (c.X - a.X));
}
