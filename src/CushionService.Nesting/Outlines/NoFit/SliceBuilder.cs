namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>Sweeps the segments of a convolution along one axis and keeps, slab by slab, where the winding number is
/// above 0, less the slots.</summary>
/// <param name="cancellation">Observed in every slab: jagged outlines have very many.</param>
internal sealed class SliceBuilder(CancellationToken cancellation)
{
    /// <summary>Doubles are taken for equal when they differ by less than this share of the extent.</summary>
    private const double RoundingShare = 1e-9;

    private readonly record struct Line(double Start, double End, double Value, double Slope, int Sign)
    {
        public double At(double t) => Value + Slope * (t - Start);
    }

    private readonly List<Line> _lines = [];
    private readonly List<Line> _active = [];
    private readonly List<double> _events = [];
    private readonly List<double> _cuts = [];
    private readonly List<(double AtStart, double AtEnd)> _order = [];
    private readonly List<(double Value, int Sign, int Line)> _crossings = [];
    private readonly List<(double Start, double End, double From, double To)> _slots = [];
    private readonly List<Band> _slab = [];
    private readonly SlabList _slabs = new();
    private double _tolerance;

    /// <param name="segments">The convolution.</param>
    /// <param name="slots">What is free on lines and at points that the winding number cannot see.</param>
    /// <param name="byRows">Whether slabs run along y (slices are rows); otherwise along x (slices are columns).</param>
    public SliceIndex Build(List<ConvolutionSegment> segments, List<Slot> slots, bool byRows)
    {
        _lines.Clear();
        _events.Clear();
        _slots.Clear();
        foreach (var (fromX, fromY, toX, toY) in slots)
        {
            var (t0, u0, t1, u1) = byRows ? (fromY, fromX, toY, toX) : (fromX, fromY, toX, toY);
            _slots.Add(t0 < t1 || (t0 == t1 && u0 < u1) ? (t0, t1, u0, u1) : (t1, t0, u1, u0));
            _events.Add(t0);
            _events.Add(t1);
        }

        var extent = 0.0;
        foreach (var (fromX, fromY, toX, toY) in segments)
        {
            var (t0, u0, t1, u1) = byRows ? (fromY, fromX, toY, toX) : (fromX, fromY, toX, toY);
            extent = Math.Max(extent, Math.Max(Math.Abs(t0), Math.Abs(u0)));
            if (t0 == t1)
            {
                continue;
            }

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
        return _slabs.Assemble(_slots);
    }

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

            FindCuts(start, end);
            for (var cut = 0; cut + 1 < _cuts.Count; cut++)
            {
                cancellation.ThrowIfCancellationRequested();
                if (_cuts[cut + 1] - _cuts[cut] > _tolerance)
                {
                    CloseSlab(_cuts[cut], _cuts[cut + 1]);
                }
            }
        }

        _slabs.Close(_events[^1]);
    }

    /// <summary>The ends of the slab and every crossing within: lines that an insertion sort from their order at the start to that at the
    /// end carries past each other.</summary>
    private void FindCuts(double start, double end)
    {
        _cuts.Clear();
        _cuts.Add(start);
        _order.Clear();
        foreach (var line in _active)
        {
            _order.Add((line.At(start), line.At(end)));
        }

        _order.Sort();
        for (var index = 1; index < _order.Count; index++)
        {
            cancellation.ThrowIfCancellationRequested();
            var here = _order[index];
            var at = index;
            for (; at > 0 && _order[at - 1].AtEnd > here.AtEnd; at--)
            {
                _order[at] = _order[at - 1];
                var (atStart, atEnd) = (here.AtStart - _order[at].AtStart, here.AtEnd - _order[at].AtEnd);
                if (atStart > _tolerance && atEnd < -_tolerance)
                {
                    _cuts.Add(start + (end - start) * atStart / (atStart - atEnd));
                }
            }

            _order[at] = here;
        }

        _cuts.Sort();
        _cuts.Add(end);
    }

    /// <summary>Adds up the winding number across the slab; a slab that goes on as the last one did is joined to it.</summary>
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
        SplitAlongSlots(start, end);
        if (IsEndOfSlot(start) || !_slabs.ContinuesLast(start, _slab))
        {
            _slabs.Add(start, _slab);
        }
    }

    private bool IsEndOfSlot(double t)
    {
        foreach (var slot in _slots)
        {
            if (slot.Start == t || slot.End == t)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Splits the bands of a slab where a slot runs through them.</summary>
    private void SplitAlongSlots(double start, double end)
    {
        var middle = (start + end) / 2;
        foreach (var (from, to, u0, u1) in _slots)
        {
            if (from > start + _tolerance || to < end - _tolerance)
            {
                continue;
            }

            var slope = (u1 - u0) / (to - from);
            for (var index = 0; index < _slab.Count; index++)
            {
                var band = _slab[index];
                var (here, distance) = (u0 + slope * (middle - from), middle - start);
                if (here > band.LowAt(distance) + _tolerance && here < band.HighAt(distance) - _tolerance)
                {
                    var line = u0 + slope * (start - from);
                    _slab[index] = band with { High = line, HighSlope = slope };
                    _slab.Insert(index + 1, band with { Low = line, LowSlope = slope });
                    break;
                }
            }
        }
    }

    private void Keep(int low, int high, double start, double middle)
    {
        if (low >= 0 && _active[high].At(middle) - _active[low].At(middle) > _tolerance)
        {
            _slab.Add(new(_active[low].At(start), _active[low].Slope, _active[high].At(start), _active[high].Slope));
        }
    }
}
