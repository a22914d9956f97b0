using System.Collections.Immutable;

namespace CushionService.Nesting.Solving;

/// <summary>The rules that strips and sheets have in common.</summary>
internal static class WellFormed
{
    /// <summary>The greatest extent, in grid units: keeps every area and every coordinate within 64 bits.</summary>
    public const long Largest = 1L << 40;

    /// <summary>Refuses pieces without an extent or a quantity, and more area than sums can hold.</summary>
    /// <param name="pieces">At least one.</param>
    public static void CheckPieces(ImmutableArray<NestingPiece> pieces)
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

    /// <summary>Refuses a piece, by its index, that breaks a rule.</summary>
    public static void Demand(bool holds, int piece, string rule)
    {
        if (!holds)
        {
            throw new ArgumentException($"Piece {piece} {rule}.");
        }
    }

    /// <summary>Refuses a problem that breaks a rule.</summary>
    public static void Demand(bool holds, string message)
    {
        if (!holds)
        {
            throw new ArgumentException(message);
        }
    }
}
