using System.Runtime.CompilerServices;

namespace CushionService.Nesting.Outlines;

/// <summary>The forbidden offsets between two outlines, cut into slabs along one axis: for any t the forbidden
/// intervals across are found in near constant time. This is a semi-discrete scan line made continuous: within a slab
/// the ends of an interval are linear in t, so nothing is rounded.</summary>
internal sealed class SliceIndex
{
    private readonly double[] _breaks;
    private readonly int[] _first;
    private readonly Band[] _bands;
    private readonly int[] _buckets;
    private readonly double _bucketsPerUnit;

    /// <param name="breaks">Where the slabs begin and end, ascending.</param>
    /// <param name="first">For list 2k (exactly on break k) and 2k + 1 (between breaks k and k + 1) its first band.</param>
    /// <param name="bands">The lists, one after the other, each ascending.</param>
    public SliceIndex(double[] breaks, int[] first, Band[] bands)
    {
        (_breaks, _first, _bands) = (breaks, first, bands);
        (Min, Max) = (breaks[0], breaks[^1]);
        _buckets = new int[2 * _breaks.Length];
        _bucketsPerUnit = (_buckets.Length - 1) / (Max - Min);
        for (var bucket = 0; bucket < _buckets.Length; bucket++)
        {
            var start = Min + (bucket - 1) / _bucketsPerUnit;
            var slab = bucket == 0 ? 0 : _buckets[bucket - 1];
            while (slab + 2 < _breaks.Length && _breaks[slab + 1] <= start)
            {
                slab++;
            }

            _buckets[bucket] = slab;
        }
    }

    /// <summary>Offsets at or below this are free.</summary>
    public double Min { get; }

    /// <summary>Offsets at or above this are free.</summary>
    public double Max { get; }

    /// <summary>The forbidden intervals at <paramref name="t"/>, which lies strictly between Min and Max.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public ReadOnlySpan<Band> At(double t, out double distance)
    {
        var slab = _buckets[(int)((t - Min) * _bucketsPerUnit)];
        while (_breaks[slab + 1] <= t)
        {
            slab++;
        }

        distance = t - _breaks[slab];
        var list = distance == 0 ? 2 * slab : 2 * slab + 1;
        return new ReadOnlySpan<Band>(_bands, _first[list], _first[list + 1] - _first[list]);
    }

    /// <summary>How far (t, u) must move along u to be free; 0 when it is free.</summary>
    public double Depth(double t, double u)
    {
        if (t <= Min || t >= Max)
        {
            return 0;
        }

        foreach (ref readonly var band in At(t, out var distance))
        {
            var (below, above) = (u - band.LowAt(distance), band.HighAt(distance) - u);
            if (below > Tolerance && above > Tolerance)
            {
                return Math.Min(below, above);
            }
        }

        return 0;
    }

    /// <summary>Rounding error that is taken for touching, in grid units; the exact audit has the last word.</summary>
    public const double Tolerance = 1e-6;

    /// <summary>The same with both axes reversed: the offsets seen from the other outline.</summary>
    public SliceIndex Reversed()
    {
        var slabs = _breaks.Length - 1;
        var reversedBreaks = new double[_breaks.Length];
        var reversedFirst = new int[_first.Length];
        var reversedBands = new List<Band>(_bands.Length);
        for (var list = 0; list <= 2 * slabs; list++)
        {
            var source = 2 * slabs - list;
            var width = (source & 1) == 1 ? _breaks[source / 2 + 1] - _breaks[source / 2] : 0;
            if ((list & 1) == 0)
            {
                reversedBreaks[list / 2] = -_breaks[source / 2];
            }

            reversedFirst[list] = reversedBands.Count;
            for (var band = _first[source + 1] - 1; band >= _first[source]; band--)
            {
                var (low, lowSlope, high, highSlope) = _bands[band];
                reversedBands.Add(new(-(high + highSlope * width), highSlope, -(low + lowSlope * width), lowSlope));
            }
        }

        reversedFirst[^1] = reversedBands.Count;
        return new SliceIndex(reversedBreaks, reversedFirst, [.. reversedBands]);
    }
}
