using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>Makes the no-fit polygon of two outlines: their convolution, the slots that a winding number cannot see, and the slices either
/// way. Between the convolution and the rest a caller may ask what the rest would cost.</summary>
/// <param name="cancellation">Observed while one is made.</param>
internal sealed class NoFitMaker(CancellationToken cancellation)
{
    // Steps for a segment of a convolution, as measured: of two convex outlines, and of any others.
    private const long ConvexSegment = 160;
    private const long AnySegment = 400;

    // So many segments cross each other everywhere: from there on slicing grows faster than with their square.
    private const long ManySegments = 3_500;
    private readonly List<ConvolutionSegment> _segments = [];
    private readonly List<Slot> _slots = [];
    private readonly SlotFinder _finder = new(cancellation);
    private readonly SliceBuilder _builder = new(cancellation);
    private OutlineShape? _lying;
    private OutlineShape? _moving;

    /// <summary>Segments of the convolution that was traced last.</summary>
    public int Segments => _segments.Count;

    /// <summary>The steps for the no-fit polygon whose convolution was traced last, as measured.</summary>
    public long Cost
    {
        get
        {
            long segments = _segments.Count;
            return _lying!.IsConvex && _moving!.IsConvex
                ? ConvexSegment * segments
                : AnySegment * segments + segments * segments * (2 + segments / ManySegments);
        }
    }

    /// <summary>Traces the convolution of two outlines, and pays for it: every edge is looked at beside every corner.</summary>
    /// <returns>The number of its segments.</returns>
    /// <param name="lying">The outline that lies still.</param>
    /// <param name="moving">The outline that moves.</param>
    /// <param name="budget">Pays for the edges and corners.</param>
    public int Trace(OutlineShape lying, OutlineShape moving, StepBudget budget)
    {
        budget.Spend(2L * lying.Corners.Length * moving.Corners.Length);
        cancellation.ThrowIfCancellationRequested();
        Trace(lying, moving);
        return _segments.Count;
    }

    /// <summary>Traces the convolution of two outlines.</summary>
    public void Trace(OutlineShape lying, OutlineShape moving)
    {
        (_lying, _moving) = (lying, moving);
        Convolution.Trace(lying, moving, _segments);
    }

    /// <summary>The no-fit polygon whose convolution was traced last.</summary>
    public NoFitPolygon Make()
    {
        cancellation.ThrowIfCancellationRequested();
        _finder.Find(_lying!, _moving!, _segments, _slots);
        return new NoFitPolygon(_builder.Build(_segments, _slots, byRows: false), _builder.Build(_segments, _slots, byRows: true));
    }
}
