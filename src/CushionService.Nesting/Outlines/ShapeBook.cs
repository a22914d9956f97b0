namespace CushionService.Nesting.Outlines;

/// <summary>The distinct outlines of a problem and, made when first asked for, the no-fit polygon of each pair.</summary>
internal sealed class ShapeBook(CancellationToken cancellation)
{
    private readonly List<OutlineShape> _shapes = [];
    private readonly List<ConvolutionSegment> _segments = [];
    private readonly SliceBuilder _builder = new();
    private NoFitPolygon?[][] _pairs = [];

    public int Count => _shapes.Count;

    public OutlineShape this[int shape] => _shapes[shape];

    /// <summary>The number of the shape; the same for equal outlines.</summary>
    public int Add(OutlineShape shape)
    {
        var known = _shapes.FindIndex(shape.IsSameAs);
        if (known >= 0)
        {
            return known;
        }

        _shapes.Add(shape);
        return _shapes.Count - 1;
    }

    /// <summary>Call once every shape is known.</summary>
    public void Close()
    {
        _pairs = new NoFitPolygon?[_shapes.Count][];
        for (var shape = 0; shape < _pairs.Length; shape++)
        {
            _pairs[shape] = new NoFitPolygon?[_shapes.Count];
        }
    }

    /// <summary>The no-fit polygons of one moving shape by lying shape; those not made yet are null.</summary>
    public NoFitPolygon?[] Around(int moving) => _pairs[moving];

    public NoFitPolygon Pair(int lying, int moving) => _pairs[moving][lying] ?? Make(lying, moving);

    private NoFitPolygon Make(int lying, int moving)
    {
        cancellation.ThrowIfCancellationRequested();
        Convolution.Trace(_shapes[lying], _shapes[moving], _segments);
        var made = new NoFitPolygon(_builder.Build(_segments, byRows: false), _builder.Build(_segments, byRows: true));
        _pairs[moving][lying] = made;
        if (lying != moving)
        {
            _pairs[lying][moving] = made.Reversed();
        }

        return made;
    }
}
