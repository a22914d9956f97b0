using CushionService.Engine.Measures;

namespace CushionService.Engine.Materials;

/// <summary>Spools, rolls and packs that hold lengths which are not joined.</summary>
internal static class Packs
{
    /// <summary>How many hold all lengths: the longest first, each from the first pack with room for it.</summary>
    /// <param name="content">Length in each pack, no less than the longest that is asked for.</param>
    /// <param name="lengths">How long each is, above zero, and how many of it.</param>
    /// <returns>The fewest where all lengths are equal, else at most 11/9 of the fewest and one (first fit decreasing; D. S. Johnson,
    /// Near-optimal bin packing algorithms, 1973, from memory).</returns>
    public static int For(Length content, IEnumerable<(Length Each, int Count)> lengths)
    {
        // Packs with the same rest are kept as one entry, so that a thousand covers take no longer than one.
        List<(Length Left, int Packs)> open = [];
        foreach ((Length each, int count) in lengths.OrderByDescending(one => one.Each))
        {
            int left = count;
            List<(Length Left, int Packs)> next = [];
            foreach ((Length rest, int packs) in open)
            {
                left -= Fill(next, rest, packs, each, left);
            }

            long fit = content.Nanometres / each.Nanometres;
            Fill(next, content, (int)((left + fit - 1) / fit), each, left);
            open = next;
        }

        return open.Sum(one => one.Packs);
    }

    // Cuts as many as there is room for, at most those that are left, and says how many.
    private static int Fill(List<(Length Left, int Packs)> packs, Length rest, int count, Length each, int left)
    {
        long fit = rest.Nanometres / each.Nanometres;
        var cut = (int)Math.Min(left, fit * count);
        int full = fit == 0 ? 0 : (int)(cut / fit),
            over = fit == 0 ? 0 : (int)(cut % fit);
        Add(rest - (fit * each), full);
        Add(rest - (over * each), over > 0 ? 1 : 0);
        Add(rest, count - full - (over > 0 ? 1 : 0));
        return cut;

        void Add(Length unused, int number)
        {
            if (number > 0)
            {
                packs.Add((unused, number));
            }
        }
    }
}
