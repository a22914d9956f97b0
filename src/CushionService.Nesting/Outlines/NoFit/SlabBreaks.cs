namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>What is forbidden exactly where one slab ends and the next begins. The forbidden offsets are open, so that on the break only
/// what both sides forbid is forbidden; slots free some of that.</summary>
/// <param name="breaks">Where the slabs begin and the last one ends, ascending.</param>
/// <param name="starts">The place of each slab's first band among all.</param>
/// <param name="all">The bands of all slabs.</param>
/// <param name="tolerance">Rounding error that is taken for touching, grid units.</param>
internal sealed class SlabBreaks(List<double> breaks, List<int> starts, List<Band> all, double tolerance)
{
    /// <summary>Takes out of the bands exactly on a break what slots leave free there.</summary>
    /// <param name="t">Where the break is on the axis.</param>
    /// <param name="slots">The slots, each ascending along the axis.</param>
    /// <param name="bands">All bands; those of the break are the last.</param>
    /// <param name="first">The place of the first band of the break.</param>
    public void CutAtSlots(double t, List<(double Start, double End, double From, double To)> slots, List<Band> bands, int first)
    {
        foreach (var (from, to, u0, u1) in slots)
        {
            if (from > t || to < t)
            {
                continue;
            }

            // A slot across the axis frees a stretch of the break; any other frees one point of it.
            var across = from == to ? 0 : (u1 - u0) * (t - from) / (to - from);
            var (low, high) = from == to ? (u0, u1) : (u0 + across, u0 + across);
            for (var index = first; index < bands.Count; index++)
            {
                var band = bands[index];
                if (high <= band.Low + tolerance || low >= band.High - tolerance)
                {
                    continue;
                }

                bands.RemoveAt(index--);
                if (low > band.Low + tolerance)
                {
                    bands.Insert(++index, new(band.Low, 0, low, 0));
                }

                if (high < band.High - tolerance)
                {
                    bands.Insert(++index, new(high, 0, band.High, 0));
                }
            }
        }
    }

    /// <summary>Adds what is forbidden on both sides of a break: there, both lists hold at once.</summary>
    /// <param name="index">The slab that begins at the break, from 1.</param>
    /// <param name="common">Takes the bands, ascending.</param>
    public void Intersect(int index, List<Band> common)
    {
        var distance = breaks[index] - breaks[index - 1];
        for (int left = starts[index - 1], right = starts[index]; left < starts[index] && right < starts[index + 1]; )
        {
            var (one, other) = (all[left], all[right]);
            var (low, high) = (Math.Max(one.LowAt(distance), other.Low), Math.Min(one.HighAt(distance), other.High));
            if (high - low > tolerance)
            {
                common.Add(new(low, 0, high, 0));
            }

            // The one that ends first can meet nothing more of the other side.
            if (one.HighAt(distance) < other.High)
            {
                left++;
            }
            else
            {
                right++;
            }
        }
    }
}
