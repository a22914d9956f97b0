using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Engine.Layouts;

/// <summary>Lays the pieces of one fabric: turns the fabric's rules into a nesting problem, and the answer back into lengths.</summary>
public static class FabricNesting
{
    private const int MostStarts = 3;

    /// <summary>Lays every piece.</summary>
    /// <param name="fabric">The fabric.</param>
    /// <param name="pieces">At least one piece of that fabric, each of which fits it (see <see cref="Fits"/>).</param>
    /// <param name="effort">How hard to search.</param>
    /// <param name="sharedBy">How many fabrics share the effort's steps.</param>
    /// <param name="cancellation">Gives up the search.</param>
    /// <exception cref="OperationCanceledException">The caller gave up.</exception>
    public static FabricLayout LayOut(
        FabricSpecification fabric,
        IReadOnlyList<CutPiece> pieces,
        Effort effort,
        int sharedBy,
        CancellationToken cancellation
    )
    {
        Grid grid = GridFor(fabric, pieces);
        (StripLayout layout, long start) = fabric.Repeat is null
            ? (Nester.Nest(Problem(fabric, pieces, grid), effort, sharedBy, cancellation), 0)
            : Matched(Problem(fabric, pieces, grid), effort, sharedBy, cancellation);
        return new FabricLayout
        {
            Fabric = fabric,
            MotifStart = grid.Back(start),
            Length = grid.Back(layout.Length),
            LowerBound = grid.Back(layout.LowerBound),
            ProvenMinimal = layout.ProvenMinimal,
            Proof = layout.Proof,
            ProofFigures = layout.ProofFigures,
            Placements = ImmutableArray.CreateRange(
                layout.Placements,
                static (placed, fabric) => Laid(fabric.pieces[placed.Piece], placed, fabric.grid),
                (pieces, grid)
            ),
            Steps = layout.Steps,
        };
    }

    /// <summary>Whether a piece fits the fabric's usable width in one of its turns.</summary>
    public static bool Fits(FabricSpecification fabric, CutPiece piece) =>
        piece.Across <= fabric.UsableWidth || (piece.Rotations == Rotations.QuarterTurns && piece.Along <= fabric.UsableWidth);

    /// <summary>A placed copy in lengths; a railroaded piece lies a quarter turn from as drawn.</summary>
    internal static LaidPiece Laid(CutPiece piece, Placement placed, Grid grid) =>
        new(piece, placed.Copy + 1, grid.Back(placed.X), grid.Back(placed.Y), piece.IsRailroaded ? (placed.Turn + 90) % 360 : placed.Turn);

    /// <summary>Whether a piece is matched to the fabric's repeat.</summary>
    public static bool IsMatched(FabricSpecification fabric, CutPiece piece) =>
        MotifMatch.Corner(piece, fabric) is { } corner && MotifMatch.FitsAcross(piece, corner, fabric);

    // The bolt may be cut anywhere in its repeat, and a repeat is bought for that, so the layout may start anywhere in it too: it starts
    // where one of the matched pieces does. What can be proven of every start is what holds without matching.
    private static (StripLayout Layout, long Start) Matched(
        StripProblem problem,
        Effort effort,
        int sharedBy,
        CancellationToken cancellation
    )
    {
        StripLayout free = Nester.Nest(
            problem with
            {
                Pieces = [.. problem.Pieces.Select(piece => piece with { Alignment = null })],
            },
            Effort.Quick,
            sharedBy,
            cancellation
        );
        (StripLayout? Layout, long Start) best = (null, 0);
        long[] phases = [.. problem.Pieces.Select(piece => piece.Alignment?.PhaseY ?? 0).Distinct().Take(MostStarts)];
        foreach (long phase in phases)
        {
            StripLayout layout = Nester.Nest(
                problem with
                {
                    Pieces = [.. problem.Pieces.Select(piece => piece with { Alignment = Later(piece.Alignment, -phase) })],
                },
                effort,
                sharedBy * phases.Length,
                cancellation
            );
            if (best.Layout is null || layout.Length < best.Layout.Length)
            {
                best = (layout, Modulo(-phase));
            }
        }

        bool proven = free.ProvenMinimal && problem.Sale.RungFor(free.LowerBound) == problem.Sale.RungFor(best.Layout!.Length);
        return (
            best.Layout! with
            {
                LowerBound = Math.Min(free.LowerBound, best.Layout.Length),
                ProvenMinimal = proven,
                Proof = proven ? free.Proof : ProofKind.None,
                ProofFigures = proven ? free.ProofFigures : "",
            },
            best.Start
        );

        Alignment? Later(Alignment? alignment, long by) => alignment is { } at ? at with { PhaseY = Modulo(at.PhaseY + by) } : null;

        long Modulo(long length) => ((length % problem.Repeat!.Length) + problem.Repeat.Length) % problem.Repeat.Length;
    }

    internal static StripProblem Problem(FabricSpecification fabric, IReadOnlyList<CutPiece> pieces, Grid grid) =>
        new()
        {
            Width = grid.Down(fabric.UsableWidth),
            Pieces = [.. pieces.Select(piece => ToNest(fabric, piece, grid))],
            Repeat = MotifMatch.Lattice(fabric, grid),
            Sale = FabricSale.Ladder(fabric, grid.Unit),
        };

    internal static NestingPiece ToNest(FabricSpecification fabric, CutPiece piece, Grid grid)
    {
        Point? corner = IsMatched(fabric, piece) ? MotifMatch.Corner(piece, fabric) : null;
        return new NestingPiece
        {
            Width = grid.Up(piece.Across),
            Length = grid.Up(piece.Along),
            Quantity = piece.Quantity,
            Rotations = corner is null ? piece.Rotations : Rotations.None,
            Outline = ImmutableArray.CreateRange(
                piece.Outline,
                static (at, laid) => OnGrid(laid.piece.AsLaid(at), laid.grid),
                (piece, grid)
            ),
            Alignment = corner is { } at ? new Alignment(grid.Down(at.X), grid.Down(at.Y)) : null,
        };
    }

    private static GridPoint OnGrid(Point at, Grid grid) => new(grid.Nearest(at.X), grid.Nearest(at.Y));

    internal static Grid GridFor(FabricSpecification fabric, IReadOnlyList<CutPiece> pieces)
    {
        var lengths = new List<Length>(2 * pieces.Count);
        var total = fabric.UsableWidth;
        foreach (CutPiece piece in pieces)
        {
            lengths.Add(piece.Width);
            lengths.Add(piece.Length);
            foreach (Point at in piece.Outline)
            {
                lengths.Add(at.X);
                lengths.Add(at.Y);
            }

            total += piece.Quantity * Length.Max(piece.Width, piece.Length);
            if (MotifMatch.Corner(piece, fabric) is { } corner)
            {
                lengths.Add(corner.X);
                lengths.Add(corner.Y);
                total += piece.Quantity * fabric.LaidRepeat!.Length;
            }
        }

        if (fabric.LaidRepeat is { } repeat)
        {
            lengths.Add(repeat.Length.HalfUp());
            lengths.Add(repeat.Width ?? Length.Zero);
        }

        return Grid.For(lengths, total);
    }
}
