using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>The distinct outlines of a problem and, made when first asked for by any thread, the no-fit polygon of each pair.</summary>
internal sealed class ShapeBook(CancellationToken cancellation)
{
    private readonly List<OutlineShape> _shapes = [];
    private readonly List<ConvolutionSegment> _segments = [];
    private readonly List<Slot> _slots = [];
    private readonly SlotFinder _finder = new();
    private readonly SliceBuilder _builder = new(cancellation);
    private NoFitPolygon?[][] _pairs = [];

    public int Count => _shapes.Count;

    public OutlineShape this[int shape] => _shapes[shape];

    /// <summary>The largest step of which every corner of every shape is a multiple.</summary>
    public long CommonStep
    {
        get
        {
            long step = 0;
            foreach (var corner in _shapes.SelectMany(shape => shape.Corners))
            {
                step = Divisors.Greatest(Divisors.Greatest(step, corner.X), corner.Y);
            }

            return step;
        }
    }

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

    /// <summary>Whether all no-fit polygons can be made in about so many operations: for convex outlines as many as they have corners, for others
    /// the square of the segments of their convolution, which jagged outlines have by thousands.</summary>
    public bool IsMadeWithin(long operations)
    {
        lock (_segments)
        {
            for (var one = 0; one < Count; one++)
            {
                for (var other = one; other < Count && operations >= 0; other++)
                {
                    operations -= Operations(_shapes[one], _shapes[other]);
                }
            }
        }

        return operations >= 0;
    }

    private long Operations(OutlineShape one, OutlineShape other)
    {
        var (m, n) = ((long)one.Corners.Length, (long)other.Corners.Length);
        if (one.IsConvex && other.IsConvex)
        {
            return m + n;
        }

        Convolution.Trace(one, other, _segments);
        return m * n + (long)_segments.Count * _segments.Count;
    }

    /// <summary>The no-fit polygons of one shape with each other; those not made yet are null.</summary>
    public NoFitPolygon?[] Around(int shape) => _pairs[shape];

    /// <summary>The no-fit polygon of two shapes, either way round: of the two, the one of the lower number lies and the other
    /// moves. Where it is the other way, offsets change their sign.</summary>
    public NoFitPolygon Pair(int one, int other) => _pairs[one][other] ?? Make(Math.Min(one, other), Math.Max(one, other));

    /// <summary>How deep a moving shape overlaps a lying one at an offset.</summary>
    public double Depth(int lying, int moving, double x, double y)
    {
        var pair = Pair(lying, moving);
        return lying <= moving ? pair.Depth(x, y) : pair.Depth(-x, -y);
    }

    private NoFitPolygon Make(int lying, int moving)
    {
        lock (_segments)
        {
            return _pairs[moving][lying] ?? MakeAlone(lying, moving);
        }
    }

    private NoFitPolygon MakeAlone(int lying, int moving)
    {
        cancellation.ThrowIfCancellationRequested();
        Convolution.Trace(_shapes[lying], _shapes[moving], _segments);
        _finder.Find(_shapes[lying], _shapes[moving], _segments, _slots);
        var made = new NoFitPolygon(_builder.Build(_segments, _slots, byRows: false), _builder.Build(_segments, _slots, byRows: true));
        _pairs[moving][lying] = made;
        _pairs[lying][moving] = made;
        return made;
    }
}
