namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>Sweeps the segments of a convolution along one axis and keeps, slab by slab, where the winding number is
/// above 0, less the slots.</summary>
/// <param name="cancellation">Observed in every slab: jagged outlines have very many.</param>
/// <remarks>A sweep over the ends of all segments (Bentley and Ottmann 1979, but with the crossings
/// between two ends found by sorting). Between two cuts no lines cross, so that the winding number
/// changes at each line in turn; it is added up from below, and what lies where it is above 0 is
/// forbidden.</remarks>
internal sealed class SliceBuilder(CancellationToken cancellation)
{
    /// <summary>Doubles are taken for equal when they differ by less than this share of the extent.</summary>
    private const double RoundingShare = 1e-9;

    // All lines by where they begin; those that reach into the present slab.
    private readonly List<SweepLine> _lines = [];
    private readonly List<SweepLine> _active = [];

    // Where lines and slots begin or end, ascending.
    private readonly List<double> _events = [];
    private readonly SlabCuts _cuts = new(cancellation);

    // The lines of a slab by their value in its middle.
    private readonly List<(double Value, int Sign, int Line)> _crossings = [];
    private readonly SlotLines _slots = new();
    private readonly List<Band> _slab = [];
    private readonly SlabList _slabs = new();
    private double _tolerance;

    /// <param name="segments">The convolution.</param>
    /// <param name="slots">What is free on lines and at points that the winding number cannot see.</param>
    /// <param name="byRows">Whether slabs run along y (slices are rows); otherwise along x (slices are columns).</param>
    /// <summary>Cuts a convolution into slices.</summary>
    /// <returns>An index of its own: the builder may be used again.</returns>
    public SliceIndex Build(List<ConvolutionSegment> segments, List<Slot> slots, bool byRows)
    {
        _lines.Clear();
        _events.Clear();
        _slots.Clear();
        foreach (var slot in slots)
        {
            _slots.Add(slot, byRows, _events);
        }

        var extent = 0.0;
        foreach (var (fromX, fromY, toX, toY) in segments)
        {
            var (t0, u0, t1, u1) = byRows ? (fromY, fromX, toY, toX) : (fromX, fromY, toX, toY);
            extent = Math.Max(extent, Math.Max(Math.Abs(t0), Math.Abs(u0)));
            // A segment across the axis bounds slabs, but no interval within one.
            if (t0 == t1)
            {
                continue;
            }

            // Lines that run one way raise the winding number, those that run the other way lower it; swapping the axes
            // mirrors the plane.
            var sign = t0 < t1 == byRows ? -1 : 1;
            if (t0 > t1)
            {
                (t0, u0, t1, u1) = (t1, u1, t0, u0);
            }

            _lines.Add(new(t0, t1, u0, (u1 - u0) / (t1 - t0), sign));
            _events.Add(t0);
            _events.Add(t1);
        }

        _tolerance = RoundingShare * extent;
        _lines.Sort((one, other) => one.Start.CompareTo(other.Start));
        _events.Sort();
        Sweep();
        return _slabs.Assemble(_slots.All);
    }

    /// <summary>Goes through the events, slab by slab.</summary>
    private void Sweep()
    {
        _slabs.Clear(_tolerance);
        _active.Clear();
        var next = 0;
        for (var index = 0; index + 1 < _events.Count; index++)
        {
            var (start, end) = (_events[index], _events[index + 1]);
            if (end - start <= _tolerance)
            {
                continue;
            }

            _active.RemoveAll(line => line.End <= start + _tolerance);
            for (; next < _lines.Count && _lines[next].Start <= start + _tolerance; next++)
            {
                if (_lines[next].End > start + _tolerance)
                {
                    _active.Add(_lines[next]);
                }
            }

            var cuts = _cuts.Find(_active, start, end, _tolerance);
            for (var cut = 0; cut + 1 < cuts.Count; cut++)
            {
                cancellation.ThrowIfCancellationRequested();
                if (cuts[cut + 1] - cuts[cut] > _tolerance)
                {
                    CloseSlab(cuts[cut], cuts[cut + 1]);
                }
            }
        }

        _slabs.Close(_events[^1]);
    }

    /// <summary>Adds up the winding number across the slab; a slab that goes on as the last one did is joined to it.</summary>
    /// <param name="start">Where the slab begins.</param>
    /// <param name="end">Where it ends; no lines cross in between.</param>
    private void CloseSlab(double start, double end)
    {
        var middle = (start + end) / 2;
        _crossings.Clear();
        for (var line = 0; line < _active.Count; line++)
        {
            _crossings.Add((_active[line].At(middle), _active[line].Sign, line));
        }

        _crossings.Sort((one, other) => one.Value.CompareTo(other.Value));
        _slab.Clear();
        var (winding, low, high) = (0, -1, -1);
        foreach (var (_, sign, line) in _crossings)
        {
            // A gap narrower than the rounding is none: the interval goes on.
            // An interval begins where the winding number leaves 0 and ends where it comes back.
            if (winding == 0 && sign > 0 && (high < 0 || _active[line].At(middle) > _active[high].At(middle) + _tolerance))
            {
                Keep(low, high, start, middle);
                low = line;
            }

            if (winding == 1 && sign < 0)
            {
                high = line;
            }

            winding += sign;
        }

        Keep(low, high, start, middle);
        _slots.Split(_slab, start, end, _tolerance);
        if (_slots.HasEndAt(start) || !_slabs.ContinuesLast(start, _slab))
        {
            _slabs.Add(start, _slab);
        }
    }

    /// <summary>Adds the interval between two lines, unless it is narrower than the rounding.</summary>
    /// <param name="low">The lower line; below 0 when there is none.</param>
    /// <param name="high">The upper line.</param>
    /// <param name="start">Where the slab begins.</param>
    /// <param name="middle">The middle of the slab, where lines are compared.</param>
    private void Keep(int low, int high, double start, double middle)
    {
        if (low >= 0 && _active[high].At(middle) - _active[low].At(middle) > _tolerance)
        {
            _slab.Add(new(_active[low].At(start), _active[low].Slope, _active[high].At(start), _active[high].Slope));
        }
    }
}
