namespace CushionService.Nesting.Outlines.Placing;

/// <summary>Orders in which copies are laid one after the other, from large to small: by area, by extent along the strip, or by extent
/// across it.</summary>
internal static class FillOrder
{
    /// <summary>The number of rules.</summary>
    public const int Rules = 3;

    /// <summary>Writes all copies from large to small, as they lie in their first turn.</summary>
    /// <param name="copies">The copies.</param>
    /// <param name="rule">From 0, below <see cref="Rules"/>.</param>
    /// <param name="keys">Room for as many numbers as there are copies.</param>
    /// <param name="order">Takes the order.</param>
    public static void Write(Copies copies, int rule, double[] keys, int[] order)
    {
        for (var copy = 0; copy < order.Length; copy++)
        {
            var shape = copies.TurnsOf(copy)[0].Shape;
            order[copy] = copy;
            keys[copy] = -(
                rule == 0 ? copies.Areas[copy]
                : rule == 1 ? copies.Along[shape]
                : copies.Across[shape]
            );
        }

        Array.Sort(keys, order);
    }
}
