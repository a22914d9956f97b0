namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>Orders from large to small. What is large is a matter of the rule: no one rule is best for every order of pieces, so that a
/// search begins with the best of several.</summary>
internal static class SizeOrder
{
    /// <summary>The number of rules: area, longer side, width, perimeter.</summary>
    public const int Rules = 4;

    /// <summary>Writes the copies from large to small.</summary>
    /// <param name="set">The sizes.</param>
    /// <param name="copies">The copies to order.</param>
    /// <param name="rule">From 0, below <see cref="Rules"/>.</param>
    /// <param name="first">Copies that come before all others, by copy; null for none.</param>
    /// <param name="sizes">Room for as many numbers as there are copies.</param>
    /// <param name="order">Takes the order.</param>
    public static void Write(RectangleSet set, int[] copies, int rule, bool[]? first, long[] sizes, int[] order)
    {
        copies.CopyTo(order, 0);
        for (var index = 0; index < order.Length; index++)
        {
            int kind = set.KindOf[order[index]];
            var (across, along) = (set.Across[kind], set.Along[kind]);
            long size = rule switch
            {
                0 => across * along,
                1 => Math.Max(across, along),
                2 => across,
                _ => across + along,
            };

            // Sizes are far below half of what a number holds.
            sizes[index] = (first is not null && first[order[index]] ? long.MinValue / 2 : 0) - size;
        }

        Array.Sort(sizes, order);
    }
}
