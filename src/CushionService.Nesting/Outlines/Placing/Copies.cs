using CushionService.Nesting.Outlines.NoFit;

namespace CushionService.Nesting.Outlines.Placing;

/// <summary>The copies to be laid, and after them the flaws, which lie where they lie: both are shapes that forbid
/// positions to others.</summary>
internal sealed class Copies
{
    // By copy: the distinct turns, and which of them a number of quarter turns is.
    private readonly (int Shape, int Degrees)[][] _turns;
    private readonly int[][] _turnByQuarter;

    // By copy: the caller's piece and number; by piece: its first copy.
    private readonly (int Piece, int Copy)[] _names;
    private readonly int[] _firstCopy;

    /// <param name="problem">A problem that passed the check.</param>
    /// <param name="cancellation">Observed while no-fit polygons are made.</param>
    /// <param name="hulls">Whether every outline counts as its convex hull, which is coarser and far less work.</param>
    public Copies(StripProblem problem, CancellationToken cancellation, bool hulls = false)
    {
        Width = problem.Width;
        Lattice = problem.Repeat;
        Book = new ShapeBook(cancellation);
        _names = new (int, int)[problem.Pieces.Sum(piece => piece.Quantity)];
        (_turns, _turnByQuarter) = (new (int, int)[_names.Length][], new int[_names.Length][]);
        (Aligned, Areas) = (new Alignment?[_names.Length], new double[_names.Length]);
        _firstCopy = new int[problem.Pieces.Length];
        for (var (piece, next) = (0, 0); piece < problem.Pieces.Length; piece++)
        {
            _firstCopy[piece] = next;
            var (turns, byQuarter) = PieceTurns.Of(problem.Pieces[piece], piece, problem.Width, hulls, Book);
            var area = (double)Book[turns[0].Shape].DoubleArea / 2;
            for (var copy = 0; copy < problem.Pieces[piece].Quantity; copy++, next++)
            {
                _names[next] = (piece, copy);
                (_turns[next], _turnByQuarter[next]) = (turns, byQuarter);
                Aligned[next] = problem.Pieces[piece].Alignment;
                Areas[next] = area;
            }
        }

        var moving = Book.Count;
        Flaws = problem.Flaws.IsDefault ? [] : [.. problem.Flaws];
        FlawShapes = Array.ConvertAll(Flaws, flaw => Book.Add(OutlineShape.Rectangle(flaw.Width, flaw.Length)));
        Book.Close(moving);
        DrawnOn = Math.Max(1, Book.CommonStep / 2);
        Across = new double[Book.Count];
        Along = new double[Book.Count];
        for (var shape = 0; shape < Book.Count; shape++)
        {
            (Across[shape], Along[shape]) = (Book[shape].Width, Book[shape].Length);
        }
    }

    /// <summary>Width of the strip, grid units.</summary>
    public long Width { get; }

    /// <summary>Half the largest step of which every corner of every shape is a multiple; 1 at least. Places on multiples of it
    /// let outlines that were drawn on a grid touch exactly.</summary>
    public double DrawnOn { get; }

    /// <summary>Number of copies.</summary>
    public int Count => _names.Length;

    /// <summary>The shapes of all turns and flaws.</summary>
    public ShapeBook Book { get; }

    /// <summary>The alignment of each copy.</summary>
    public Alignment?[] Aligned { get; }

    /// <summary>The fabric's repeat; not null when a copy is aligned.</summary>
    public RepeatLattice? Lattice { get; }

    /// <summary>The flaws; they may overlap each other.</summary>
    public GridRectangle[] Flaws { get; }

    /// <summary>The shape of each flaw.</summary>
    public int[] FlawShapes { get; }

    /// <summary>Extent across the strip by shape.</summary>
    public double[] Across { get; }

    /// <summary>Extent along the strip by shape.</summary>
    public double[] Along { get; }

    /// <summary>Area by copy.</summary>
    public double[] Areas { get; }

    /// <summary>The distinct ways in which a copy may lie and fits the width.</summary>
    /// <returns>Shape and degrees; one at least.</returns>
    public ReadOnlySpan<(int Shape, int Degrees)> TurnsOf(int copy) => _turns[copy];

    /// <summary>Which copy a placement lays, and in which of its <see cref="TurnsOf(int)"/>.</summary>
    public (int Copy, int Turn) Find(Placement placement)
    {
        var copy = _firstCopy[placement.Piece] + placement.Copy;
        return (copy, _turnByQuarter[copy][placement.Turn / 90]);
    }

    /// <summary>Where a copy lies, in the caller's terms.</summary>
    /// <param name="copy">Which.</param>
    /// <param name="turn">One of its turns.</param>
    /// <param name="x">Left edge of its box, whole grid units.</param>
    /// <param name="y">Lower edge of its box, likewise.</param>
    public Placement Place(int copy, int turn, double x, double y) =>
        new(_names[copy].Piece, _names[copy].Copy, 0, (long)x, (long)y, _turns[copy][turn].Degrees);
}
