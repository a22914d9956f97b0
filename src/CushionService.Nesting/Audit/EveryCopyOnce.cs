using System.Collections.Immutable;

namespace CushionService.Nesting.Audit;

/// <summary>Checks that a layout lays what was asked for: no copy twice, none missing, none that nobody asked for.</summary>
internal static class EveryCopyOnce
{
    /// <summary>Returns when every copy of every piece is among the placements, or among those said to be unplaced, exactly once.</summary>
    /// <exception cref="LayoutAuditException">A copy is missing, strange, or there twice.</exception>
    /// <param name="pieces">The problem's pieces.</param>
    /// <param name="placements">The copies that are laid.</param>
    /// <param name="unplaced">The copies that are said to have found no room, on sheets.</param>
    public static void Check(
        ImmutableArray<NestingPiece> pieces,
        ImmutableArray<Placement> placements,
        ImmutableArray<(int Piece, int Copy)> unplaced = default
    )
    {
        // The copies of all pieces in one row, each piece's from its start on.
        var starts = new int[pieces.Length + 1];
        for (var piece = 0; piece < pieces.Length; piece++)
        {
            starts[piece + 1] = starts[piece] + pieces[piece].Quantity;
        }

        // As many places as there are copies: when each is met at most once and all are counted, each
        // is met exactly once.
        var seen = new bool[starts[^1]];
        var count = 0;
        foreach (var placement in placements)
        {
            Note((placement.Piece, placement.Copy));
        }

        foreach (var copy in unplaced.IsDefault ? [] : unplaced)
        {
            Note(copy);
        }

        if (count != seen.Length)
        {
            throw new LayoutAuditException("A demanded copy is missing.");
        }

        void Note((int Piece, int Copy) key)
        {
            bool known = key.Piece >= 0 && key.Piece < pieces.Length && key.Copy >= 0 && key.Copy < pieces[key.Piece].Quantity;
            if (!known || seen[starts[key.Piece] + key.Copy])
            {
                throw new LayoutAuditException($"A copy is there twice, or was never demanded: {key}.");
            }

            seen[starts[key.Piece] + key.Copy] = true;
            count++;
        }
    }
}
