using System.Globalization;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>Dual feasible functions: numbers given to extents such that extents which fit side by side into a whole never
/// add up to more than the whole's number. A product of two, one for each axis, is then an area that no layout
/// exceeds. Families: u (Fekete and Schepers 2001), the threshold function of Martello, Monaci and Vigo 2003, and the rounding
/// function of Carlier, Clautiaux and Moukrim 2007. A rectangle that may turn counts in the turn where it is least.</summary>
internal sealed class DualFeasible(RectangleSet set)
{
    private const int MostKinds = 24;
    private readonly List<(int Family, long Parameter)> _across = [];
    private readonly List<(int Family, long Parameter)> _along = [];

    /// <summary>An argument that the copies do not fit the strip up to a length; null when none is found.</summary>
    public string? RulesOut(long length, StepBudget budget)
    {
        if (set.Kinds > MostKinds)
        {
            return null;
        }

        Functions(_across, set.Width);
        Functions(_along, length);
        var (acrossUpright, acrossTurned) = (Values(_across, set.Across, set.Width), Values(_across, set.Along, set.Width));
        var (alongUpright, alongTurned) = (Values(_along, set.Along, length), Values(_along, set.Across, length));
        budget.Spend((long)(_across.Count + _along.Count) * set.Kinds);
        for (var f = 0; f < _across.Count; f++)
        {
            for (var g = 0; g < _along.Count; g++)
            {
                Int128 need = 0;
                for (var kind = 0; kind < set.Kinds; kind++)
                {
                    var (a, b) = (set.Across[kind], set.Along[kind]);
                    Int128 least = Int128.MaxValue;
                    if (a <= set.Width && b <= length)
                    {
                        least = (Int128)acrossUpright[f][kind] * alongUpright[g][kind];
                    }

                    if (set.Turns[kind] && b <= set.Width && a <= length)
                    {
                        least = Int128.Min(least, (Int128)acrossTurned[f][kind] * alongTurned[g][kind]);
                    }

                    if (least == Int128.MaxValue)
                    {
                        return string.Create(CultureInfo.InvariantCulture, $"{a} by {b} does not fit {set.Width} by {length}");
                    }

                    need += least * set.Count[kind];
                }

                budget.Spend(set.Kinds);
                Int128 room = (Int128)Value(_across[f], set.Width, set.Width) * Value(_along[g], length, length);
                if (need > room)
                {
                    return string.Create(
                        CultureInfo.InvariantCulture,
                        $"{Name(_across[f])} across and {Name(_along[g])} along need {need} of the {room} that {set.Width} by {length} has");
                }
            }
        }

        return null;
    }

    private void Functions(List<(int Family, long Parameter)> functions, long whole)
    {
        functions.Clear();
        functions.Add((0, 1));
        for (long k = 1; k <= 6; k++)
        {
            functions.Add((1, k));
        }

        for (var kind = 0; kind < set.Kinds; kind++)
        {
            Thresholds(functions, whole, set.Across[kind]);
            Thresholds(functions, whole, set.Along[kind]);
        }
    }

    private void Thresholds(List<(int Family, long Parameter)> functions, long whole, long extent)
    {
        // With many kinds the pairs would outnumber what a page can wait for.
        if (set.Kinds > 8 && functions.Count > 40)
        {
            return;
        }

        foreach (long threshold in (ReadOnlySpan<long>)[extent, whole - extent + 1])
        {
            if (threshold > 0 && threshold <= whole / 2 && !functions.Contains((2, threshold)))
            {
                functions.Add((2, threshold));
                functions.Add((3, threshold));
            }
        }
    }

    /// <summary>The values of all kinds' extents, by function and kind.</summary>
    private static long[][] Values(List<(int Family, long Parameter)> functions, long[] extents, long whole) =>
        [.. functions.Select(function => extents.Select(extent => extent <= whole ? Value(function, extent, whole) : 0).ToArray())];

    private static string Name((int Family, long Parameter) function) => function.Family switch
    {
        0 => "extent",
        1 => $"u({function.Parameter})",
        2 => $"threshold({function.Parameter})",
        _ => $"rounding({function.Parameter})",
    };

    private static long Value((int Family, long Parameter) function, long x, long whole)
    {
        long p = function.Parameter;
        return function.Family switch
        {
            0 => x,
            1 => (p + 1) * x % whole == 0 ? x * p : (p + 1) * x / whole * whole,
            2 => x > whole - p ? whole : x < p ? 0 : x,
            _ => 2 * x > whole ? 2 * (whole / p - (whole - x) / p) : 2 * x == whole ? whole / p : 2 * (x / p),
        };
    }
}
