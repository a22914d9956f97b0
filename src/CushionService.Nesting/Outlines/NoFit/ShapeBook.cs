using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>The distinct outlines of a problem and the no-fit polygon of each pair. Two outlines turned together keep their no-fit polygon,
/// turned: it is made once, and moved for the other turns.</summary>
/// <param name="cancellation">Observed while no-fit polygons are made.</param>
internal sealed class ShapeBook(CancellationToken cancellation)
{
    /// <summary>Segments of convolutions, for all pairs; each takes about 400 bytes once it is cut into slices.</summary>
    private const long MostSegments = 500_000;

    // For each segment of a no-fit polygon that is turned, not made.
    private const long StepsToTurn = 8;

    private readonly ShapeList _shapes = new();

    // Of each shape: which outline it is a turn of, and by how many quarters.
    private readonly List<(int Family, int Quarter)> _origins = [];

    // Of each pair of outlines, and quarters between them: the shapes whose no-fit polygon was made
    // first.
    private readonly Dictionary<(int, int, int), (int Lying, int Moving)> _made = [];
    private readonly NoFitMaker _maker = new(cancellation);
    private readonly PairTable _pairs = new();
    private int _moving;

    /// <summary>Number of shapes.</summary>
    public int Count => _shapes.Count;

    /// <summary>A shape by its number.</summary>
    public OutlineShape this[int shape] => _shapes[shape];

    /// <summary>The largest step of which every corner of every shape is a multiple, in grid units.</summary>
    public long CommonStep => _shapes.CommonStep;

    /// <summary>The number of the shape; the same for equal outlines.</summary>
    /// <param name="shape">The outline as it lies.</param>
    /// <param name="family">The same number for the turns of one outline; −1 for an outline by itself.</param>
    /// <param name="quarter">How many quarter turns counter-clockwise it is from the family's first.</param>
    public int Add(OutlineShape shape, int family = -1, int quarter = 0)
    {
        var (number, isNew) = _shapes.Add(shape);
        if (isNew)
        {
            _origins.Add(family < 0 ? (-1 - number, 0) : (family, quarter & 3));
        }

        return number;
    }

    /// <summary>Call once every shape is known.</summary>
    /// <param name="moving">How many shapes, from the first on, belong to copies; those after them are flaws, which never meet each
    /// other.</param>
    public void Close(int moving = int.MaxValue)
    {
        _moving = Math.Min(moving, _shapes.Count);
    }

    /// <summary>Makes all no-fit polygons that a search can ask for, if that takes no more than the given steps, and counts them. Jagged
    /// outlines have convolutions of thousands of segments, and many different outlines very many pairs.</summary>
    /// <remarks>What they take is added up first, from the convolutions alone, so that what cannot be made costs little.</remarks>
    /// <returns>Whether they are made; if not, no more than the given steps are spent.</returns>
    /// <param name="budget">Pays for what is made.</param>
    /// <param name="most">Steps that may be spent here.</param>
    public bool TryMakeAll(StepBudget budget, long most)
    {
        // Even a pair of triangles takes some hundred steps.
        if ((long)_moving * _shapes.Count > most / 100)
        {
            return false;
        }

        _pairs.MakeRoom(_shapes.Count);
        if (!CanMakeAll(budget, most))
        {
            return false;
        }

        foreach (var (one, other) in Missing())
        {
            _maker.Trace(_shapes[one], _shapes[other], budget);
            if (!TryTurn(one, other, budget))
            {
                budget.Spend(_maker.Cost);
                _pairs.Keep(one, other, _maker.Make());
            }
        }

        return true;
    }

    private bool CanMakeAll(StepBudget budget, long most)
    {
        var (start, cost, segments) = (budget.Spent, 0L, 0L);
        var made = new HashSet<(int, int, int)>(_made.Keys);
        foreach (var (one, other) in Missing())
        {
            long before = budget.Spent;
            segments += _maker.Trace(_shapes[one], _shapes[other], budget);
            // Traced once more when it is made.
            cost += budget.Spent - before + (made.Add(Turns(one, other)) ? _maker.Cost : StepsToTurn * _maker.Segments);
            if (budget.Spent - start + cost > most || segments > MostSegments)
            {
                return false;
            }
        }

        return true;
    }

    // The pairs that a search can ask for and that are not made yet.
    private IEnumerable<(int One, int Other)> Missing()
    {
        for (var one = 0; one < _moving; one++)
        {
            for (var other = one; other < Count; other++)
            {
                if (_pairs[one, other] is null)
                {
                    yield return (one, other);
                }
            }
        }
    }

    /// <summary>The no-fit polygons of one shape with each other; those not made yet are null.</summary>
    /// <param name="shape">Number of the shape.</param>
    public NoFitPolygon?[] Around(int shape) => _pairs.Around(shape);

    /// <summary>The no-fit polygon of two shapes, either way round: of the two, the one of the lower number lies and the other
    /// moves. Where it is the other way, offsets change their sign. It is made here if it was not before.</summary>
    /// <param name="one">Number of a shape.</param>
    /// <param name="other">Number of another, or the same.</param>
    public NoFitPolygon Pair(int one, int other)
    {
        _pairs.MakeRoom(_shapes.Count);
        if (_pairs[one, other] is { } known)
        {
            return known;
        }

        var (lying, moving) = (Math.Min(one, other), Math.Max(one, other));
        _maker.Trace(_shapes[lying], _shapes[moving]);
        return _pairs.Keep(lying, moving, _maker.Make());
    }

    /// <summary>How deep a moving shape overlaps a lying one at an offset.</summary>
    /// <param name="lying">Number of the shape that lies.</param>
    /// <param name="moving">Number of the shape that moves.</param>
    /// <param name="x">Left edge of the moving box less that of the lying one, grid units.</param>
    /// <param name="y">Lower edge, likewise.</param>
    public double Depth(int lying, int moving, double x, double y)
    {
        var pair = Pair(lying, moving);
        return lying <= moving ? pair.Depth(x, y) : pair.Depth(-x, -y);
    }

    /// <summary>Takes the no-fit polygon of the same two outlines in other turns, if that is known, and turns it.</summary>
    /// <param name="one">The shape of the lower number; its convolution with the other was traced
    /// last.</param>
    /// <param name="other">The shape of the higher number.</param>
    /// <param name="budget">Pays a little for each segment.</param>
    private bool TryTurn(int one, int other, StepBudget budget)
    {
        var key = Turns(one, other);
        if (!_made.TryGetValue(key, out var known))
        {
            _made[key] = (one, other);
            return false;
        }

        budget.Spend(StepsToTurn * _maker.Segments);
        var turns = (_origins[one].Quarter - _origins[known.Lying].Quarter) & 3;
        _pairs.Keep(one, other, _pairs[known.Lying, known.Moving]!.Turned(turns, _shapes[known.Lying], _shapes[known.Moving]));
        return true;
    }

    // The same for two outlines that lie to each other as two others do, whatever quarter turn both have made.
    private (int Family, int OtherFamily, int Quarters) Turns(int one, int other) =>
        (_origins[one].Family, _origins[other].Family, (_origins[other].Quarter - _origins[one].Quarter) & 3);
}
