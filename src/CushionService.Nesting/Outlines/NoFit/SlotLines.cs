namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>The slots as a sweep along one axis sees them: free lines through forbidden bands, from one place on the axis to
/// another.</summary>
internal sealed class SlotLines
{
    /// <summary>Where each begins and ends on the axis, and its values across there; a point begins where it ends.</summary>
    public List<(double Start, double End, double From, double To)> All { get; } = [];

    /// <summary>Forgets all.</summary>
    public void Clear() => All.Clear();

    /// <summary>Adds a slot, and its ends to the events of the sweep.</summary>
    /// <param name="slot">In offsets.</param>
    /// <param name="byRows">Whether the axis runs along y; otherwise along x.</param>
    /// <param name="events">Takes the two ends.</param>
    public void Add(Slot slot, bool byRows, List<double> events)
    {
        var (fromX, fromY, toX, toY) = slot;
        var (t0, u0, t1, u1) = byRows ? (fromY, fromX, toY, toX) : (fromX, fromY, toX, toY);
        All.Add(t0 < t1 || (t0 == t1 && u0 < u1) ? (t0, t1, u0, u1) : (t1, t0, u1, u0));
        events.Add(t0);
        events.Add(t1);
    }

    /// <summary>Whether a slot begins or ends at a place on the axis.</summary>
    /// <remarks>Slabs are never joined there: what slots free on the break would be lost.</remarks>
    public bool HasEndAt(double t)
    {
        foreach (var slot in All)
        {
            if (slot.Start == t || slot.End == t)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Splits the bands of a slab where a slot runs through them.</summary>
    /// <param name="slab">The bands, ascending.</param>
    /// <param name="start">Where the slab begins.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="tolerance">Rounding error that is taken for touching, grid units.</param>
    public void Split(List<Band> slab, double start, double end, double tolerance)
    {
        var middle = (start + end) / 2;
        foreach (var (from, to, u0, u1) in All)
        {
            if (from > start + tolerance || to < end - tolerance)
            {
                continue;
            }

            var slope = (u1 - u0) / (to - from);
            for (var index = 0; index < slab.Count; index++)
            {
                var band = slab[index];
                var (here, distance) = (u0 + slope * (middle - from), middle - start);
                if (here > band.LowAt(distance) + tolerance && here < band.HighAt(distance) - tolerance)
                {
                    var line = u0 + slope * (start - from);
                    slab[index] = band with { High = line, HighSlope = slope };
                    slab.Insert(index + 1, band with { Low = line, LowSlope = slope });
                    break;
                }
            }
        }
    }
}
