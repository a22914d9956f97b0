using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Layouts;

/// <summary>The nesting problem of one fabric for a span of positions of its motif.</summary>
internal sealed class SpanProblem
{
    // Of outlines, what may lie anywhere along is tried at this distance; rectangles at every place of the grid.
    private static readonly Length AlongStripes = Length.FromMillimetres(1);

    // In grid units: a width rounded up, and a place and a room rounded down.
    private const long MostRounded = 2;

    private readonly FabricSpecification _fabric;
    private readonly IReadOnlyList<CutPiece> _pieces;
    private readonly MotifSpan _span;
    private readonly Point?[] _corners;
    private readonly bool[] _spans;
    private readonly bool[] _isTurned;

    /// <summary>Sets the problem up.</summary>
    /// <param name="fabric">The fabric.</param>
    /// <param name="pieces">Pieces that fit its usable width.</param>
    /// <param name="span">Where the motif is; null where nothing is matched.</param>
    public SpanProblem(FabricSpecification fabric, IReadOnlyList<CutPiece> pieces, MotifSpan? span)
    {
        (_fabric, _pieces, _span) = (fabric, pieces, span ?? default);
        _corners = new Point?[pieces.Count];
        (_spans, _isTurned) = (new bool[pieces.Count], new bool[pieces.Count]);
        if (span is { } given)
        {
            Point motif = new(given.From, fabric.LaidRepeat?.MotifY ?? Length.Zero);
            for (var i = 0; i < pieces.Count; i++)
            {
                Point? corner = MotifMatch.Corner(pieces[i], fabric, motif);
                _corners[i] = corner is { } at && at.X + pieces[i].Across <= Width ? corner : null;
            }
        }

        Grid = GridOf();
        // Where the span leaves less than one step of the grid, no piece is matched in it: nothing has to move with the motif.
        _span = Grid.Down(Width) > 0 ? _span : _span with { Over = Length.Zero };
        Pieces = [.. pieces.Select(Nested)];
        Starts =
        [
            .. IsUnknownAlong ? Array.Empty<long>() : [0],
            .. Pieces.Where(piece => piece.Alignment is not null).Select(piece => piece.Alignment!.Value.PhaseY),
        ];
        Starts = Starts.IsEmpty ? [0] : [.. Starts.Distinct()];
    }

    /// <summary>The grid of the problem.</summary>
    public Grid Grid { get; }

    /// <summary>Phases of the repeat at which the layout may start, in grid units: those of its matched pieces, and the cut's where the
    /// motif is known along.</summary>
    public ImmutableArray<long> Starts { get; }

    /// <summary>What is laid.</summary>
    public ImmutableArray<NestingPiece> Pieces { get; }

    /// <summary>Whether the piece of that number is matched at every position of the span.</summary>
    /// <param name="piece">Its number in the list that the problem was made from.</param>
    public bool IsMatched(int piece) => _corners[piece] is not null;

    /// <summary>From a start of the layout to the next row of motifs, in grid units.</summary>
    /// <param name="start">One of <see cref="Starts"/>.</param>
    /// <returns>Zero where nothing is matched.</returns>
    public long MotifAfter(long start) => Lattice() is { } lattice ? Modulo(-start, lattice.Length) : 0;

    /// <summary>Whether any piece is an outline.</summary>
    public bool HasOutlines => Pieces.Any(piece => !piece.Outline.IsEmpty);

    /// <summary>From the cut to where a layout begins that starts at a phase, in grid units; nothing where it may begin anywhere.</summary>
    /// <param name="start">One of <see cref="Starts"/>.</param>
    public long Before(long start) => IsUnknownAlong ? 0 : start;

    private bool IsUnknownAlong => _fabric.LaidRepeat is { IsUnknownAlong: true };

    private Length Width => _fabric.UsableWidth - _span.Over;

    /// <summary>The problem.</summary>
    /// <param name="goal">The lengths that are as good as each other.</param>
    /// <param name="start">The phase at which the layout starts, in grid units.</param>
    /// <param name="boxes">Whether outlines are taken as the boxes around them.</param>
    public StripProblem At(SaleGoal goal, long start = 0, bool boxes = false)
    {
        RepeatLattice? lattice = Lattice();
        return new StripProblem
        {
            Width = Grid.Down(Width),
            Pieces = start == 0 && !boxes ? Pieces : [.. Pieces.Select(Moved)],
            Repeat = lattice,
            Sale = goal.Ladder(Grid),
        };

        NestingPiece Moved(NestingPiece piece) =>
            piece with
            {
                Outline = boxes ? [] : piece.Outline,
                Alignment = piece.Alignment is { } at ? at with { PhaseY = Modulo(at.PhaseY - start, lattice!.Length) } : null,
            };
    }

    /// <summary>A placed copy in lengths; a railroaded piece lies a quarter turn from as drawn.</summary>
    /// <param name="placed">The copy.</param>
    /// <param name="before">From the cut to where the layout begins, in grid units.</param>
    public LaidPiece Laid(Placement placed, long before = 0)
    {
        CutPiece piece = _pieces[placed.Piece];
        int turn = placed.Turn + (piece.IsRailroaded || _isTurned[placed.Piece] ? 90 : 0);
        return new LaidPiece(
            piece,
            placed.Copy + 1,
            _spans[placed.Piece] ? Length.Zero : Grid.Back(placed.X),
            Grid.Back(placed.Y + before),
            turn % 360,
            IsMatched(placed.Piece)
        );
    }

    private RepeatLattice? Lattice()
    {
        if (_fabric.LaidRepeat is not { } repeat || _corners.All(corner => corner is null))
        {
            return null;
        }

        long along =
            repeat.Length is { } length ? Grid.Down(length)
            : HasOutlines ? Math.Max(1, Grid.Down(AlongStripes))
            : 1;
        return new RepeatLattice(repeat.Width is { } width ? Grid.Down(width) : 0, along, Grid.Down(repeat.DropLength));
    }

    private NestingPiece Nested(CutPiece piece, int number)
    {
        var nested = new NestingPiece
        {
            Width = Grid.Up(piece.Across),
            Length = Grid.Up(piece.Along),
            Quantity = piece.Quantity,
            Rotations = piece.Rotations,
            Outline = ImmutableArray.CreateRange(
                piece.Outline,
                static (at, laid) => OnGrid(laid.piece.AsLaid(at), laid.Grid),
                (piece, Grid)
            ),
        };
        long width = Grid.Down(Width);
        if (_corners[number] is { } corner)
        {
            // A matched piece lies one way: turned, another point of it would be on the motif. What just fits is neither made wider than
            // the fabric nor pushed off it by sizes that the grid rounds outward.
            long fitted = nested.Width - width <= MostRounded ? Math.Min(nested.Width, width) : nested.Width,
                most = Math.Max(width - fitted, 0),
                across = Grid.Down(corner.X);
            across = across > most && across - most <= MostRounded ? most : across;
            return nested with { Width = fitted, Rotations = Rotations.None, Alignment = new Alignment(across, Grid.Down(corner.Y)) };
        }

        bool mayTurn = piece.Rotations == Rotations.QuarterTurns;
        if (nested.Width <= width || (mayTurn && nested.Length <= width))
        {
            return nested;
        }

        // Wider than what the span leaves of the fabric: nothing lies beside it, so that it may stay where it is when the rest is moved.
        _spans[number] = true;
        _isTurned[number] = mayTurn && piece.Along < piece.Across;
        return nested with
        {
            Width = width,
            Length = _isTurned[number] ? nested.Width : nested.Length,
            Rotations = Rotations.None,
            Outline = [],
        };
    }

    private static GridPoint OnGrid(Point at, Grid grid) => new(grid.Nearest(at.X), grid.Nearest(at.Y));

    private Grid GridOf()
    {
        var lengths = new List<Length>(2 * _pieces.Count);
        Length total = _fabric.UsableWidth;
        for (var i = 0; i < _pieces.Count; i++)
        {
            CutPiece piece = _pieces[i];
            lengths.Add(piece.Width);
            lengths.Add(piece.Length);
            foreach (Point at in piece.Outline)
            {
                lengths.Add(at.X);
                lengths.Add(at.Y);
            }

            total += piece.Quantity * Length.Max(piece.Width, piece.Length);
            if (_corners[i] is { } corner)
            {
                lengths.Add(corner.X);
                lengths.Add(corner.Y);
                total += piece.Quantity * (_fabric.LaidRepeat!.Length ?? Length.Zero);
            }
        }

        if (_fabric.LaidRepeat is { } repeat && _corners.Any(corner => corner is not null))
        {
            lengths.Add(repeat.Length ?? Length.Zero);
            lengths.Add(repeat.DropLength);
            lengths.Add(repeat.Width ?? Length.Zero);
        }

        return Grid.For(lengths, total);
    }

    private static long Modulo(long length, long repeat) => ((length % repeat) + repeat) % repeat;
}
