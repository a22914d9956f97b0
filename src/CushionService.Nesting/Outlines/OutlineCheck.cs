using CushionService.Nesting.Outlines.NoFit;

namespace CushionService.Nesting.Outlines;

/// <summary>Refuses outlines that are not what <see cref="NestingPiece.Outline"/> says.</summary>
internal static class OutlineCheck
{
    /// <summary>Keeps cross products within 64 bits.</summary>
    public const long Largest = 1L << 30;

    /// <exception cref="ArgumentException">An outline is no simple polygon, runs clockwise, does not fill its bounding box, or a
    /// piece is larger than 2^30.</exception>
    public static void Check(StripProblem problem)
    {
        for (var index = 0; index < problem.Pieces.Length; index++)
        {
            var piece = problem.Pieces[index];
            Demand(piece.Width <= Largest && piece.Length <= Largest, $"Piece {index} is larger than 2^30.");
            if (piece.Outline.IsDefaultOrEmpty)
            {
                continue;
            }

            var corners = piece.Outline.AsSpan();
            var (right, upper) = (0L, 0L);
            var (left, lower) = (Largest, Largest);
            foreach (var (x, y) in corners)
            {
                (left, lower) = (Math.Min(left, x), Math.Min(lower, y));
                (right, upper) = (Math.Max(right, x), Math.Max(upper, y));
            }

            Demand(
                left == 0 && lower == 0 && right == piece.Width && upper == piece.Length,
                $"The outline of piece {index} does not fill its bounding box."
            );
            Demand(IsSimple(corners), $"The outline of piece {index} crosses or touches itself.");
            Demand(OutlineShape.Of(piece, 0).DoubleArea > 0, $"The outline of piece {index} runs clockwise.");
        }

        foreach (var flaw in problem.Flaws.IsDefault ? [] : problem.Flaws)
        {
            Demand(flaw.Width <= Largest && flaw.Length <= Largest, "A flaw is larger than 2^30.");
        }
    }

    private static bool IsSimple(ReadOnlySpan<GridPoint> corners)
    {
        for (var edge = 0; edge < corners.Length; edge++)
        {
            var (a, b) = (corners[edge], corners[(edge + 1) % corners.Length]);
            for (var other = edge + 1; other < corners.Length; other++)
            {
                var (c, d) = (corners[other], corners[(other + 1) % corners.Length]);
                var neighbours = other == edge + 1 || (edge == 0 && other == corners.Length - 1);
                if (a == b || (neighbours ? TurnsBack(a, b, c, d) : Meet(a, b, c, d)))
                {
                    return false;
                }
            }
        }

        return corners.Length >= 3;
    }

    /// <summary>Whether two edges that share an end lie on top of each other.</summary>
    private static bool TurnsBack(GridPoint a, GridPoint b, GridPoint c, GridPoint d)
    {
        var (shared, one, other) = b == c ? (b, a, d) : (a, b, c);
        return Side(one, shared, other) == 0 && !Within(one, other, shared);
    }

    private static bool Meet(GridPoint a, GridPoint b, GridPoint c, GridPoint d)
    {
        var (forC, forD, forA, forB) = (Side(a, b, c), Side(a, b, d), Side(c, d, a), Side(c, d, b));
        return (forC != forD && forA != forB && forC * forD <= 0 && forA * forB <= 0)
            || (forC == 0 && Within(a, b, c))
            || (forD == 0 && Within(a, b, d))
            || (forA == 0 && Within(c, d, a));
    }

    private static bool Within(GridPoint a, GridPoint b, GridPoint point) =>
        Math.Min(a.X, b.X) <= point.X && point.X <= Math.Max(a.X, b.X) && Math.Min(a.Y, b.Y) <= point.Y && point.Y <= Math.Max(a.Y, b.Y);

    private static int Side(GridPoint a, GridPoint b, GridPoint c) => ((b.X - a.X) * (c.Y - a.Y)).CompareTo((b.Y - a.Y) * (c.X - a.X));

    private static void Demand(bool holds, string message)
    {
        if (!holds)
        {
            throw new ArgumentException(message);
        }
    }
}
