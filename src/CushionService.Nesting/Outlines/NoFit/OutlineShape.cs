namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>One simple polygon as it lies: a piece in one of its turns, its bounding box at the origin.</summary>
internal sealed class OutlineShape
{
    /// <summary>Takes corners that are in their final order.</summary>
    private OutlineShape(GridPoint[] corners)
    {
        Corners = corners;
        Width = corners.Max(corner => corner.X);
        Length = corners.Max(corner => corner.Y);
        IsConvex = PolygonCorners.EveryCornerTurnsLeft(corners);
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

    /// <summary>A rectangle, such as a flaw.</summary>
    public static OutlineShape Rectangle(long width, long length) => new([new(0, 0), new(width, 0), new(width, length), new(0, length)]);

    /// <summary>The piece turned counter-clockwise by 0, 90, 180 or 270 degrees.</summary>
    /// <param name="piece">The piece as drawn.</param>
    /// <param name="turn">Degrees counter-clockwise.</param>
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
        var corners = PolygonCorners.WithoutStraight([.. turned.Select(corner => new GridPoint(corner.X - left, corner.Y - lower))]);
        return Starting(corners);
    }

    /// <summary>Whether the corners are the same.</summary>
    /// <remarks>Corners start at the lowest and there leftmost, and none is straight, so that equal
    /// outlines have equal lists.</remarks>
    public bool IsSameAs(OutlineShape other) => Corners.AsSpan().SequenceEqual(other.Corners);

    /// <summary>The convex hull: it holds the outline, and its box is the same.</summary>
    public OutlineShape Hull() => Starting(PolygonCorners.Hull(Corners));

    /// <summary>The outline with its corners from the lowest on, and there from the leftmost.</summary>
    private static OutlineShape Starting(GridPoint[] corners)
    {
        var first = Array.IndexOf(corners, corners.MinBy(corner => (corner.Y, corner.X)));
        return new OutlineShape([.. corners[first..], .. corners[..first]]);
    }
}
