using CushionService.Nesting.Rectangles.Skylines;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>A set of copies in which it is settled, for some kinds, how many copies lie turned. Piece 2k of the new set holds the copies of
/// kind k that lie upright or are not settled, piece 2k + 1 those that lie turned.</summary>
internal static class SettledTurns
{
    /// <summary>A kind of which it is not settled how many copies lie turned.</summary>
    public const int Undecided = -1;

    /// <summary>The copies with their turns settled as far as they are.</summary>
    /// <param name="set">All copies.</param>
    /// <param name="turned">For each kind how many copies lie turned, or <see cref="Undecided"/>.</param>
    public static RectangleSet Of(RectangleSet set, int[] turned)
    {
        var pieces = new NestingPiece[2 * set.Kinds];
        for (var kind = 0; kind < set.Kinds; kind++)
        {
            var (across, along, over) = (set.Across[kind], set.Along[kind], Math.Max(0, turned[kind]));
            var rotations = turned[kind] == Undecided ? Rotations.QuarterTurns : Rotations.None;
            pieces[2 * kind] = new NestingPiece
            {
                Width = across,
                Length = along,
                Quantity = set.Count[kind] - over,
                Rotations = rotations,
            };
            pieces[2 * kind + 1] = new NestingPiece
            {
                Width = along,
                Length = across,
                Quantity = over,
            };
        }

        return new RectangleSet([.. pieces], set.Width);
    }

    /// <summary>Takes a layout of settled copies over as one of all copies.</summary>
    /// <param name="set">All copies.</param>
    /// <param name="settled">What <see cref="Of"/> made of them.</param>
    /// <param name="found">Where the settled copies lie.</param>
    /// <param name="layout">Takes the places.</param>
    public static void Read(RectangleSet set, RectangleSet settled, RectangleLayout found, RectangleLayout layout)
    {
        // Copies of a kind are neighbours, so that each kind counts up from its first.
        var next = new int[set.Kinds];
        for (int copy = set.Copies - 1; copy >= 0; copy--)
        {
            next[set.KindOf[copy]] = copy;
        }

        for (var copy = 0; copy < settled.Copies; copy++)
        {
            int piece = settled.PieceOf(copy);
            int target = next[piece / 2]++;
            layout.Put(target, found[copy].X, found[copy].Y, piece % 2 == 1);
        }
    }
}
