namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>Mirrors slices along their axis, across it, or both ways, which is half a turn. Nothing is sliced anew, so that the no-fit
/// polygon of two outlines turned together costs next to nothing.</summary>
internal static class SliceMirror
{
    /// <summary>The same slices mirrored.</summary>
    /// <param name="all">The slabs, ascending.</param>
    /// <param name="lists">Their bands.</param>
    /// <param name="along">t becomes this less t; null leaves it.</param>
    /// <param name="across">u becomes this less u; null leaves it.</param>
    public static SliceIndex Of(Slab[] all, Band[] lists, double? along, double? across)
    {
        var slabs = new Slab[all.Length];
        var bands = new List<Band>(lists.Length);
        for (var index = 0; index < slabs.Length; index++)
        {
            // What holds at the start of a mirrored slab held at its end, where the next one started.
            var from = along is null ? index : slabs.Length - 1 - index;
            var at = along is null ? from : from + 1;
            var old = all[from];
            var first = bands.Count;
            var width = along is null ? 0 : old.End - old.Start;
            Mirror(new ReadOnlySpan<Band>(lists, old.First, old.Count), width, across, bands);
            var firstAtStart = bands.Count;
            if (at < slabs.Length)
            {
                Mirror(new ReadOnlySpan<Band>(lists, all[at].FirstAtStart, all[at].AtStart), 0, across, bands);
            }

            var (start, end) = along is { } centre ? (centre - old.End, centre - old.Start) : (old.Start, old.End);
            slabs[index] = new(
                start,
                end,
                old.Count > 0 ? bands[first] : default,
                old.Count,
                first,
                firstAtStart,
                bands.Count - firstAtStart
            );
        }

        return new SliceIndex(slabs, [.. bands]);
    }

    /// <summary>Adds bands mirrored, ascending; those of a slab that is passed the other way start at its end.</summary>
    /// <param name="bands">The bands, ascending.</param>
    /// <param name="width">Width of the slab when its axis is mirrored; else 0.</param>
    /// <param name="across">As above.</param>
    /// <param name="mirrored">Takes the bands.</param>
    private static void Mirror(ReadOnlySpan<Band> bands, double width, double? across, List<Band> mirrored)
    {
        for (var index = 0; index < bands.Length; index++)
        {
            var band = bands[across is null ? index : bands.Length - 1 - index];
            var (low, high) = (band.LowAt(width), band.HighAt(width));
            var (lowSlope, highSlope) = width == 0 ? (band.LowSlope, band.HighSlope) : (-band.LowSlope, -band.HighSlope);
            mirrored.Add(across is { } sum ? new(sum - high, -highSlope, sum - low, -lowSlope) : new(low, lowSlope, high, highSlope));
        }
    }
}
