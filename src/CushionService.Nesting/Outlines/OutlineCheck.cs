using CushionService.Nesting.Outlines.NoFit;

namespace CushionService.Nesting.Outlines;

/// <summary>Refuses outlines that are not what <see cref="NestingPiece.Outline"/> says.</summary>
internal static class OutlineCheck
{
    /// <summary>Keeps cross products within 64 bits.</summary>
    public const long Largest = 1L << 30;

    /// <exception cref="ArgumentException">An outline is no simple polygon, runs clockwise, does not fill its bounding box, or a
    /// piece is larger than 2^30.</exception>
    /// <param name="problem">A problem that is well-formed but for its outlines.</param>
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
            Demand(SimplePolygon.Is(corners), $"The outline of piece {index} crosses or touches itself.");
            Demand(OutlineShape.Of(piece, 0).DoubleArea > 0, $"The outline of piece {index} runs clockwise.");
        }

        foreach (var flaw in problem.Flaws.IsDefault ? [] : problem.Flaws)
        {
            Demand(flaw.Width <= Largest && flaw.Length <= Largest, "A flaw is larger than 2^30.");
        }
    }

    /// <summary>Throws when a rule is broken.</summary>
    private static void Demand(bool holds, string message)
    {
        if (!holds)
        {
            throw new ArgumentException(message);
        }
    }
}
