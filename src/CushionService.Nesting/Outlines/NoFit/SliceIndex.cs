using System.Diagnostics;
using System.Runtime.CompilerServices;

namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>The forbidden offsets between two outlines, cut into slabs along one axis: for any t the forbidden
/// intervals across are found in near constant time. This is a semi-discrete scan line made continuous: within a slab
/// the ends of an interval are linear in t, so nothing is rounded.</summary>
internal sealed class SliceIndex
{
    // Slabs in order, the bands of all of them, and for each of many equal buckets the slab in which a
    // bucket begins.
    private readonly Slab[] _slabs;
    private readonly Band[] _bands;
    private readonly int[] _buckets;
    private readonly double _bucketsPerUnit;

    /// <param name="slabs">Ascending, each beginning where the last one ends.</param>
    /// <param name="bands">The lists of all slabs, each ascending.</param>
    /// <summary>Builds the buckets: two for each slab, so that a slab is found in one or two steps
    /// where slabs are about equal.</summary>
    public SliceIndex(Slab[] slabs, Band[] bands)
    {
        Debug.Assert(slabs.Length > 0 && slabs[0].Start < slabs[^1].End, "slices have an extent");
        (_slabs, _bands) = (slabs, bands);
        (Min, Max) = (slabs[0].Start, slabs[^1].End);
        _buckets = new int[2 * slabs.Length + 2];
        _bucketsPerUnit = (_buckets.Length - 1) / (Max - Min);
        for (var bucket = 0; bucket < _buckets.Length; bucket++)
        {
            var start = Min + (bucket - 1) / _bucketsPerUnit;
            var slab = bucket == 0 ? 0 : _buckets[bucket - 1];
            while (slab + 1 < slabs.Length && slabs[slab].End <= start)
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

    /// <summary>Rounding error that is taken for touching, in grid units; the exact audit has the last word.</summary>
    public const double Tolerance = 1e-6;

    /// <summary>A slab at or before the one that holds <paramref name="t"/>, which lies strictly between Min and Max.</summary>
    /// <param name="t">Place on the axis.</param>
    /// <param name="end">Where the slab ends.</param>
    /// <returns>Number of the slab.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public int Guess(double t, out double end)
    {
        var slab = _buckets[double.ConvertToIntegerNative<int>((t - Min) * _bucketsPerUnit)];
        end = _slabs[slab].End;
        return slab;
    }

    /// <summary>The slab that holds t, starting at a guess.</summary>
    /// <param name="guess">What <see cref="Guess"/> gave.</param>
    /// <param name="end">What it gave with that.</param>
    /// <param name="t">The place.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public ref readonly Slab From(int guess, double end, double t)
    {
        while (end <= t)
        {
            end = _slabs[++guess].End;
        }

        return ref _slabs[guess];
    }

    /// <summary>The forbidden intervals at a distance from the start of a slab.</summary>
    /// <param name="slab">The slab.</param>
    /// <param name="distance">From its start, at least 0; exactly at the start other bands
    /// hold.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public ReadOnlySpan<Band> Bands(in Slab slab, double distance) =>
        distance == 0
            ? new ReadOnlySpan<Band>(_bands, slab.FirstAtStart, slab.AtStart)
            : new ReadOnlySpan<Band>(_bands, slab.First, slab.Count);

    /// <summary>How far (t, u) must move along u to be free; 0 when it is free.</summary>
    /// <param name="t">Place on the axis.</param>
    /// <param name="u">Value across.</param>
    /// <returns>Grid units; the shorter of the two ways out.</returns>
    public double Depth(double t, double u)
    {
        if (t <= Min || t >= Max)
        {
            return 0;
        }

        ref readonly var slab = ref From(Guess(t, out var end), end, t);
        Debug.Assert(slab.Start <= t && t < slab.End, "the slab holds the offset");
        var distance = t - slab.Start;
        foreach (ref readonly var band in Bands(slab, distance))
        {
            var (below, above) = (u - band.LowAt(distance), band.HighAt(distance) - u);
            if (below > Tolerance && above > Tolerance)
            {
                return double.MinNative(below, above);
            }
        }

        return 0;
    }

    /// <summary>Where the forbidden offsets at <paramref name="t"/> end; negative infinity when there are none.</summary>
    /// <param name="t">Place on the axis.</param>
    public double Highest(double t)
    {
        if (t <= Min || t >= Max)
        {
            return double.NegativeInfinity;
        }

        ref readonly var slab = ref From(Guess(t, out var end), end, t);
        var distance = t - slab.Start;
        var bands = Bands(slab, distance);
        return bands.IsEmpty ? double.NegativeInfinity : bands[^1].HighAt(distance);
    }

    /// <summary>The same slices mirrored.</summary>
    /// <param name="along">t becomes this less t; null leaves it.</param>
    /// <param name="across">u becomes this less u; null leaves it.</param>
    public SliceIndex Mirrored(double? along, double? across) => SliceMirror.Of(_slabs, _bands, along, across);
}
