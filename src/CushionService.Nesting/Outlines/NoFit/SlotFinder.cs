namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>Finds the offsets at which an outline fits another without play. There two stretches of the convolution run along each other
/// in opposite directions, or two of its corners meet; whether the offset is free there, whole numbers decide.</summary>
/// <param name="cancellation">Observed for every stretch: jagged outlines have very many.</param>
/// <remarks>A tongue as wide as its slot can slide in, though both walls forbid the offsets on either
/// side: without slots, a search would never find that place. Two convex outlines have none.</remarks>
internal sealed class SlotFinder(CancellationToken cancellation)
{
    // The segments of the convolution by the line they lie on, and where they begin.
    private readonly List<Stretch> _stretches = [];

    // Where segments begin; a place where two do may be free though all around it is forbidden.
    private readonly List<GridPoint> _corners = [];
    private readonly List<long> _cuts = [];
    private readonly FreeOffset _free = new();

    /// <summary>Finds all slots of two outlines.</summary>
    /// <param name="lying">The outline that lies still.</param>
    /// <param name="moving">The outline that moves.</param>
    /// <param name="segments">Their convolution.</param>
    /// <param name="slots">Takes the slots; emptied first.</param>
    public void Find(OutlineShape lying, OutlineShape moving, List<ConvolutionSegment> segments, List<Slot> slots)
    {
        slots.Clear();
        if (lying.IsConvex && moving.IsConvex)
        {
            return;
        }

        _free.Begin(lying, moving);
        _stretches.Clear();
        _corners.Clear();
        for (var index = 0; index < segments.Count; index++)
        {
            _stretches.Add(Stretch.Of(segments[index], index));
            _corners.Add(new((long)segments[index].FromX, (long)segments[index].FromY));
        }

        _stretches.Sort();
        for (var one = 0; one < _stretches.Count; one++)
        {
            cancellation.ThrowIfCancellationRequested();
            for (
                var other = one + 1;
                other < _stretches.Count && _stretches[other].IsInLineWith(_stretches[one]) && _stretches[other].From < _stretches[one].To;
                other++
            )
            {
                if (_stretches[one].Ahead != _stretches[other].Ahead)
                {
                    AddSlots(segments, _stretches[one], _stretches[other], slots);
                }
            }
        }

        _corners.Sort(static (one, other) => (one.X, one.Y).CompareTo((other.X, other.Y)));
        for (var index = 1; index < _corners.Count; index++)
        {
            var here = _corners[index];
            if (
                // Exactly two corners meet there; whether it is free, whole numbers decide.
                here == _corners[index - 1]
                && (index + 1 == _corners.Count || here != _corners[index + 1])
                && _free.Is(2 * here.X, 2 * here.Y)
            )
            {
                slots.Add(new(here.X, here.Y, here.X, here.Y));
            }
        }
    }

    /// <summary>Adds what is free of the part where two stretches run along each other. It is cut where another segment crosses, since it
    /// can become free or forbidden only there.</summary>
    /// <param name="segments">The whole convolution.</param>
    /// <param name="one">A stretch.</param>
    /// <param name="other">One of the same line that runs the other way, and meets it.</param>
    /// <param name="slots">Takes what is free.</param>
    private void AddSlots(List<ConvolutionSegment> segments, Stretch one, Stretch other, List<Slot> slots)
    {
        var (x, y, unit) =
            one.DirectionX != 0
                ? ((long)segments[one.Segment].FromX, (long)segments[one.Segment].FromY, one.DirectionX)
                : ((long)segments[one.Segment].FromX, (long)segments[one.Segment].FromY, one.DirectionY);
        var origin = one.DirectionX != 0 ? x : y;
        var (from, to) = ((Math.Max(one.From, other.From) - origin) / unit, (Math.Min(one.To, other.To) - origin) / unit);
        if (from > to)
        {
            (from, to) = (to, from);
        }

        _cuts.Clear();
        _cuts.Add(from);
        _cuts.Add(to);
        foreach (var segment in segments)
        {
            var ahead = Side(segment.FromX, segment.FromY);
            var behind = Side(segment.ToX, segment.ToY);
            if (ahead == behind || (ahead > 0 && behind > 0) || (ahead < 0 && behind < 0))
            {
                continue;
            }

            // Rounded both ways, since the crossing need not be a whole number: between two cuts
            // nothing changes.
            var share = ahead / (ahead - behind);
            var (crossX, crossY) = (
                segment.FromX + share * (segment.ToX - segment.FromX),
                segment.FromY + share * (segment.ToY - segment.FromY)
            );
            var at = one.DirectionX != 0 ? (crossX - x) / unit : (crossY - y) / unit;
            Cut(Math.Floor(at - 1e-6));
            Cut(Math.Ceiling(at + 1e-6));
            Cut(Math.Round(at));
        }

        _cuts.Sort();
        for (var cut = 0; cut + 1 < _cuts.Count; cut++)
        {
            var (low, high) = (_cuts[cut], _cuts[cut + 1]);
            // Asked in the middle of each part, in halves of a unit so that the middle is a whole number.
            if (low < high && _free.Is(2 * x + (low + high) * one.DirectionX, 2 * y + (low + high) * one.DirectionY))
            {
                slots.Add(new(x + low * one.DirectionX, y + low * one.DirectionY, x + high * one.DirectionX, y + high * one.DirectionY));
            }
        }

        // Twice the area that a point makes with the line: its sign tells the side.
        double Side(double px, double py) => (double)one.DirectionX * (py - y) - (double)one.DirectionY * (px - x);

        void Cut(double at)
        {
            if (at > from && at < to)
            {
                _cuts.Add((long)at);
            }
        }
    }
}
