using System.Collections.Immutable;

namespace CushionService.Nesting.Solving;

/// <summary>Refuses problems that make no sense before a kernel sees them.</summary>
internal static class WellFormed
{
    /// <summary>Keeps every area and every coordinate within 64 bits.</summary>
    private const long Largest = 1L << 40;

    public static void Check(StripProblem problem)
    {
        Demand(problem.Width is > 0 and <= Largest, "The strip's width must be from 1 to 2^40.");
        Demand(!problem.Pieces.IsDefaultOrEmpty, "There must be at least one piece.");
        Demand(problem.Sale is { Step: > 0, Numerator: > 0, Denominator: > 0 }, "The sale ladder's step and scale must be above 0.");
        if (problem.Repeat is { } lattice)
        {
            Demand(lattice is { Width: >= 0, Length: > 0, Drop: >= 0 } && lattice.Drop < lattice.Length, "The repeat is ill-formed.");
        }

        foreach (var flaw in problem.Flaws.IsDefault ? [] : problem.Flaws)
        {
            Demand(flaw is { Width: > 0, Length: > 0 }, "A flaw must have an extent.");
        }

        CheckPieces(problem.Pieces);
        for (var index = 0; index < problem.Pieces.Length; index++)
        {
            var piece = problem.Pieces[index];
            bool fits = piece.Width <= problem.Width || (piece.Rotations == Rotations.QuarterTurns && piece.Length <= problem.Width);
            Demand(fits, index, "is wider than the strip in every allowed turn");
            Demand(
                piece.Alignment is null || (problem.Repeat is not null && piece.Rotations == Rotations.None),
                index,
                "is aligned, but the fabric has no repeat or the piece may turn"
            );
        }
    }

    public static void Check(SheetProblem problem)
    {
        Demand(!problem.Pieces.IsDefaultOrEmpty, "There must be at least one piece.");
        Demand(!problem.Sheets.IsDefaultOrEmpty, "There must be at least one sheet.");
        CheckPieces(problem.Pieces);
        foreach (var sheet in problem.Sheets)
        {
            Demand(
                sheet is { Width: > 0 and <= Largest, Length: > 0 and <= Largest, Cost: >= 0, Available: null or >= 0 },
                "A sheet must have an extent and a cost of at least 0."
            );
        }

        foreach (var piece in problem.Pieces)
        {
            Demand(piece.Alignment is null, "Pieces on sheets are not aligned.");
        }
    }

    private static void CheckPieces(ImmutableArray<NestingPiece> pieces)
    {
        Int128 area = 0;
        for (var index = 0; index < pieces.Length; index++)
        {
            var piece = pieces[index];
            Demand(piece.Width is > 0 and <= Largest && piece.Length is > 0 and <= Largest, index, "must have an extent");
            Demand(piece.Quantity >= 1, index, "must be wanted at least once");
            area += (Int128)piece.Width * piece.Length * piece.Quantity;
        }

        Demand(area <= long.MaxValue / 8, "The pieces' total area exceeds 64 bits.");
    }

    private static void Demand(bool holds, int piece, string rule)
    {
        if (!holds)
        {
            throw new ArgumentException($"Piece {piece} {rule}.");
        }
    }

    private static void Demand(bool holds, string message)
    {
        if (!holds)
        {
            throw new ArgumentException(message);
        }
    }
}
