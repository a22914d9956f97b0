namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>Sets of kinds that are worth a search of their own: what does not fit without the small kinds does not fit with them, and is
/// often shown far sooner.</summary>
internal static class KindSubsets
{
    // Sets of kinds grow fast with their number; beyond this all kinds are searched together.
    private const int MostKinds = 10;

    // Area, longer side, shorter side.
    private const int Rules = 3;

    /// <summary>The first kinds by area, by longer and by shorter side, and all kinds but one.</summary>
    /// <param name="grid">The copies.</param>
    /// <returns>Each set once, its kinds ascending; none when there are too many kinds.</returns>
    public static List<int[]> Of(BoxGrid grid)
    {
        var parts = new List<int[]>();
        int kinds = grid.Set.Kinds;
        if (kinds > MostKinds)
        {
            return parts;
        }

        for (var rule = 0; rule < Rules; rule++)
        {
            int[] order = [.. Enumerable.Range(0, kinds).OrderByDescending(kind => Size(kind, rule))];
            for (var taken = 1; taken < kinds; taken++)
            {
                Propose(order[..taken]);
            }
        }

        // Of one or two kinds, all but one are among the sets already.
        for (var dropped = 0; dropped < kinds && kinds > 2; dropped++)
        {
            Propose([.. Enumerable.Range(0, kinds).Where(kind => kind != dropped)]);
        }

        return parts;

        long Size(int kind, int rule) =>
            rule switch
            {
                0 => (long)grid.Across[kind] * grid.Along[kind],
                1 => Math.Max(grid.Across[kind], grid.Along[kind]),
                _ => Math.Min(grid.Across[kind], grid.Along[kind]),
            };

        void Propose(int[] part)
        {
            Array.Sort(part);
            if (!parts.Any(other => other.SequenceEqual(part)))
            {
                parts.Add(part);
            }
        }
    }
}
