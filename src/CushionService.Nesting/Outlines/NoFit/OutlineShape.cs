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
    }

    /// <summary>Corners counter-clockwise, no three in line, starting at the lowest and there leftmost.</summary>
    public GridPoint[] Corners { get; }

    public long Width { get; }

    public long Length { get; }

    /// <summary>Whether every corner turns left.</summary>
    public bool IsConvex
    {
        get
        {
            for (var index = 0; index < Corners.Length; index++)
            {
                var (a, b, c) = (Corners[index], Corners[(index + 1) % Corners.Length], Corners[(index + 2) % Corners.Length]);
                if ((Int128)(b.X - a.X) * (c.Y - b.Y) < (Int128)(b.Y - a.Y) * (c.X - b.X))
                {
                    return false;
                }
            }

            return true;
        }
    }

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
        var first = Array.IndexOf(corners, corners.MinBy(corner => (corner.Y, corner.X)));
        return new OutlineShape([.. corners[first..], .. corners[..first]]);
    }

    public bool IsSameAs(OutlineShape other) => Corners.AsSpan().SequenceEqual(other.Corners);

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
