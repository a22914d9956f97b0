namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>The moves of the search over orders: two copies change places, or one goes to the place of another.</summary>
internal static class SequenceMove
{
    /// <summary>Makes a move. The same move with the places exchanged takes it back.</summary>
    /// <param name="order">The copies in order.</param>
    /// <param name="a">A place in the order.</param>
    /// <param name="b">Another place.</param>
    /// <param name="insert">Whether the copy at <paramref name="a"/> goes to <paramref name="b"/>, and those between move up by one; else
    /// the two change places.</param>
    public static void Make(int[] order, int a, int b, bool insert)
    {
        if (insert)
        {
            Insert(order, a, b);
        }
        else
        {
            (order[a], order[b]) = (order[b], order[a]);
        }
    }

    /// <summary>Takes one copy to another place; those between move by one.</summary>
    private static void Insert(int[] order, int from, int to)
    {
        int copy = order[from];
        if (from < to)
        {
            Array.Copy(order, from + 1, order, from, to - from);
        }
        else
        {
            Array.Copy(order, to, order, to + 1, from - to);
        }

        order[to] = copy;
    }
}
