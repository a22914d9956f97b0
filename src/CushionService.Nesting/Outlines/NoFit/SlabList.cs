using System.Diagnostics;

namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>The slabs of one axis as a sweep finds them, from the first on; a slab that goes on as the last one did is joined to it. In
/// the end they become a <see cref="SliceIndex"/>.</summary>
/// <remarks>Jagged outlines have slabs by the thousand, most of which go on as the last did: joining
/// them keeps the index small and its search short.</remarks>
internal sealed class SlabList
{
    /// <summary>Slopes are taken for equal when they differ by less than this share.</summary>
    private const double RoundingShare = 1e-9;

    // The bands of the last slab, at its start.
    private readonly List<Band> _last = [];

    // Where each slab begins; at the end, also where the last one ends.
    private readonly List<double> _breaks = [];

    // The place of each slab's first band in the list of all.
    private readonly List<int> _first = [];
    private readonly List<Band> _bands = [];
    private double _tolerance;

    /// <summary>Begins anew.</summary>
    /// <param name="tolerance">Rounding error that is taken for touching, grid units.</param>
    public void Clear(double tolerance)
    {
        _tolerance = tolerance;
        _breaks.Clear();
        _first.Clear();
        _bands.Clear();
        _last.Clear();
    }

    /// <summary>Begins a slab.</summary>
    /// <param name="start">Where; above where the last one started.</param>
    /// <param name="slab">Its bands, ascending.</param>
    public void Add(double start, List<Band> slab)
    {
        Debug.Assert(_breaks.Count == 0 || start > _breaks[^1], "slabs ascend");
        _breaks.Add(start);
        _first.Add(_bands.Count);
        _bands.AddRange(slab);
        _last.Clear();
        _last.AddRange(slab);
    }

    /// <summary>Ends the last slab.</summary>
    /// <param name="end">Where; above where it started.</param>
    public void Close(double end)
    {
        Debug.Assert(_breaks.Count > 0 && end > _breaks[^1], "a slab has an extent");
        _breaks.Add(end);
        _first.Add(_bands.Count);
    }

    /// <summary>Whether bands at a start go on as those of the last slab do.</summary>
    /// <param name="start">Where the bands begin.</param>
    /// <param name="slab">The bands, ascending.</param>
    /// <returns>False at the first slab.</returns>
    public bool ContinuesLast(double start, List<Band> slab)
    {
        if (_breaks.Count == 0 || slab.Count != _last.Count)
        {
            return false;
        }

        var distance = start - _breaks[^1];
        for (var index = 0; index < slab.Count; index++)
        {
            var (before, now) = (_last[index], slab[index]);
            if (
                Math.Abs(before.LowAt(distance) - now.Low) > _tolerance
                || Math.Abs(before.HighAt(distance) - now.High) > _tolerance
                || Math.Abs(before.LowSlope - now.LowSlope) > RoundingShare * (1 + Math.Abs(now.LowSlope))
                || Math.Abs(before.HighSlope - now.HighSlope) > RoundingShare * (1 + Math.Abs(now.HighSlope))
            )
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Adds the lists exactly on the breaks: forbidden there is what is forbidden on both sides.</summary>
    /// <param name="slots">The slots, each ascending along the axis.</param>
    /// <returns>An index of its own: the list may be used again.</returns>
    public SliceIndex Assemble(List<(double Start, double End, double From, double To)> slots)
    {
        var slabs = new Slab[_breaks.Count - 1];
        var breaks = new SlabBreaks(_breaks, _first, _bands, _tolerance);
        var all = new List<Band>(2 * _bands.Count);
        all.AddRange(_bands);
        for (var slab = 0; slab < slabs.Length; slab++)
        {
            var firstAtStart = all.Count;
            if (slab > 0)
            {
                breaks.Intersect(slab, all);
                breaks.CutAtSlots(_breaks[slab], slots, all, firstAtStart);
            }

            var (first, count) = (_first[slab], _first[slab + 1] - _first[slab]);
            slabs[slab] = new(
                _breaks[slab],
                _breaks[slab + 1],
                count > 0 ? all[first] : default,
                count,
                first,
                firstAtStart,
                all.Count - firstAtStart
            );
        }

        return new SliceIndex(slabs, [.. all]);
    }
}
