using System.Collections.Immutable;

namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>One simple polygon as it lies: a piece in one of its turns, its bounding box at the origin.</summary>
internal sealed class OutlineShape
{
    private OutlineShape(GridPoint[] corners)
    {
        Corners = corners;
        Width = corners.Max(corner => corner.X);
        Length = corners.Max(corner => corner.Y);
        IsConvex = EveryCornerTurnsLeft(corners);
        foreach (var corner in corners)
        {
            Hash = unchecked(31 * Hash + corner.X.GetHashCode());
            Hash = unchecked(31 * Hash + corner.Y.GetHashCode());
        }
    }

    /// <summary>Corners counter-clockwise, no three in line, starting at the lowest and there leftmost.</summary>
    public GridPoint[] Corners { get; }

    /// <summary>Extent across, grid units.</summary>
    public long Width { get; }

    /// <summary>Extent along, grid units.</summary>
    public long Length { get; }

    /// <summary>Whether every corner turns left.</summary>
    public bool IsConvex { get; }

    /// <summary>Equal for equal outlines.</summary>
    public int Hash { get; }

    /// <summary>Twice the enclosed area, in square grid units.</summary>
    public Int128 DoubleArea
    {
        get
        {
            Int128 sum = 0;
            for (var index = 0; index < Corners.Length; index++)
            {
                var (from, to) = (Corners[index], Corners[(index + 1) % Corners.Length]);
                sum += (Int128)from.X * to.Y - (Int128)from.Y * to.X;
            }

            return sum;
        }
    }

    public static OutlineShape Rectangle(long width, long length) => new([new(0, 0), new(width, 0), new(width, length), new(0, length)]);

    /// <summary>The piece turned counter-clockwise by 0, 90, 180 or 270 degrees.</summary>
    public static OutlineShape Of(NestingPiece piece, int turn)
    {
        IEnumerable<GridPoint> drawn = piece.Outline.IsDefaultOrEmpty
            ? [new(0, 0), new(piece.Width, 0), new(piece.Width, piece.Length), new(0, piece.Length)]
            : piece.Outline;
        var turned = drawn
            .Select(corner =>
                turn switch
                {
                    0 => corner,
                    90 => new GridPoint(-corner.Y, corner.X),
                    180 => new GridPoint(-corner.X, -corner.Y),
                    _ => new GridPoint(corner.Y, -corner.X),
                }
            )
            .ToArray();
        var (left, lower) = (turned.Min(corner => corner.X), turned.Min(corner => corner.Y));
        var corners = WithoutStraightCorners([.. turned.Select(corner => new GridPoint(corner.X - left, corner.Y - lower))]);
        return Starting(corners);
    }

    /// <summary>Whether the corners are the same.</summary>
    public bool IsSameAs(OutlineShape other) => Corners.AsSpan().SequenceEqual(other.Corners);

    /// <summary>The convex hull, by Andrew's monotone chain (Information Processing Letters 9(5), 1979): it holds the outline, and its box
    /// is the same.</summary>
    public OutlineShape Hull()
    {
        GridPoint[] sorted = [.. Corners.OrderBy(corner => corner.X).ThenBy(corner => corner.Y)];
        var hull = new List<GridPoint>();
        for (var pass = 0; pass < 2; pass++, Array.Reverse(sorted))
        {
            var start = hull.Count;
            foreach (var corner in sorted)
            {
                while (hull.Count >= start + 2 && Turn(hull[^2], hull[^1], corner) <= 0)
                {
                    hull.RemoveAt(hull.Count - 1);
                }

                hull.Add(corner);
            }

            hull.RemoveAt(hull.Count - 1);
        }

        return Starting([.. hull]);
    }

    private static OutlineShape Starting(GridPoint[] corners)
    {
        var first = Array.IndexOf(corners, corners.MinBy(corner => (corner.Y, corner.X)));
        return new OutlineShape([.. corners[first..], .. corners[..first]]);
    }

    private static bool EveryCornerTurnsLeft(GridPoint[] corners)
    {
        for (var index = 0; index < corners.Length; index++)
        {
            if (Turn(corners[index], corners[(index + 1) % corners.Length], corners[(index + 2) % corners.Length]) < 0)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>1 when the way a, b, c turns left at b, −1 when right, 0 when it goes straight on or back.</summary>
    private static int Turn(GridPoint a, GridPoint b, GridPoint c) =>
        ((Int128)(b.X - a.X) * (c.Y - b.Y)).CompareTo((Int128)(b.Y - a.Y) * (c.X - b.X));

    private static GridPoint[] WithoutStraightCorners(ImmutableArray<GridPoint> corners)
    {
        var kept = new List<GridPoint>(corners);
        for (var index = 0; index < kept.Count && kept.Count > 3; )
        {
            var (before, here, after) = (kept[(index + kept.Count - 1) % kept.Count], kept[index], kept[(index + 1) % kept.Count]);
            var cross = (Int128)(here.X - before.X) * (after.Y - here.Y) - (Int128)(here.Y - before.Y) * (after.X - here.X);
            if (cross == 0)
            {
                kept.RemoveAt(index);
                index = Math.Max(0, index - 1);
            }
            else
            {
                index++;
            }
        }

        return [.. kept];
    }
}
