using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Engine.Layouts;

/// <summary>Lays fabric that is sold by the roll so that no piece lies across two rolls. The rolls lie end to end, each as long as it is
/// after the wash.</summary>
internal static class RollLayout
{
    // A second search, and one of outlines: each with this share of the first one's steps.
    private const int Sharing = 2;

    /// <summary>The layout on whole rolls.</summary>
    /// <param name="layout">The layout in one length.</param>
    /// <param name="pieces">What is laid.</param>
    /// <param name="effort">How hard to search.</param>
    /// <param name="sharedBy">How many fabrics share the effort's steps.</param>
    /// <param name="cancellation">Cancels the search.</param>
    /// <returns>The layout as it is where one roll holds it. Where motifs are matched, or a piece is longer than a roll, it runs on from
    /// roll to roll, and nothing is proven of it.</returns>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    public static FabricLayout Of(
        FabricLayout layout,
        IReadOnlyList<CutPiece> pieces,
        Effort effort,
        int sharedBy,
        CancellationToken cancellation
    )
    {
        FabricSpecification fabric = layout.Fabric;
        if (!fabric.Sold.IsByTheRoll || Rolls(layout, layout.Length) == 1)
        {
            return layout;
        }

        Length usable = FabricSale.Left(fabric, fabric.Sold.Step, Length.Zero);
        if (layout.MotifX is not null || pieces.Any(piece => !Fits(piece, fabric.UsableWidth, usable)))
        {
            return layout with { CrossesRolls = true, ProvenMinimal = false, Proof = ProofKind.None, ProofFigures = "" };
        }

        var problem = new SpanProblem(fabric, pieces, null);
        (long width, long length) = (problem.Grid.Down(fabric.UsableWidth), problem.Grid.Down(usable));
        ImmutableArray<NestingPiece> boxes = [.. problem.Pieces.Select(piece => piece with { Outline = [] })];
        SheetLayout sheets = Nester.Nest(
            new SheetProblem { Pieces = boxes, Sheets = [new StockSheet(width, length, null, 1)] },
            effort,
            sharedBy * Sharing,
            cancellation
        );
        (ImmutableArray<Placement> placed, long steps) = (sheets.Placements, sheets.Steps);
        if (problem.HasOutlines && sheets.Sheets.Length > Rolls(layout, layout.Length))
        {
            // Outlines that lie within each other's boxes may do with fewer rolls.
            StripLayout row = Nester.Nest(InARow(problem, length, sheets.Sheets.Length), effort, sharedBy * Sharing, cancellation);
            ImmutableArray<Placement> inRow = [.. row.Placements.Select(one => OnItsRoll(one, length))];
            placed = inRow.Max(one => one.Sheet) < sheets.Sheets.Length - 1 ? inRow : placed;
            steps += row.Steps;
        }

        return OnRolls(layout, problem, placed, layout.Steps + steps);
    }

    /// <summary>Where each roll begins in a layout on rolls: what one roll is after the wash.</summary>
    /// <param name="fabric">A fabric that is sold by the roll.</param>
    public static Length Pitch(FabricSpecification fabric) => FabricSale.Left(fabric, fabric.Sold.Step + fabric.Squaring, Length.Zero);

    private static FabricLayout OnRolls(FabricLayout layout, SpanProblem problem, ImmutableArray<Placement> placed, long steps)
    {
        Length pitch = Pitch(layout.Fabric);
        // The roll that is used the least comes last: what it has left is one remnant.
        var rolls = placed
            .Select(one => (Roll: one.Sheet, Laid: problem.Laid(one)))
            .GroupBy(one => one.Roll)
            .OrderByDescending(roll => roll.Max(one => one.Laid.Y + one.Laid.Length).Nanometres)
            .ThenBy(roll => roll.Key);
        ImmutableArray<LaidPiece> laid =
        [
            .. rolls.SelectMany((roll, number) => roll.Select(one => one.Laid with { Y = one.Laid.Y + number * pitch })),
        ];
        Length length = laid.Max(one => one.Y + one.Length);
        bool proven = layout.ProvenMinimal && Rolls(layout, layout.LowerBound) == Rolls(layout, length);
        return layout with
        {
            Length = length,
            Placements = laid,
            Steps = steps,
            ProvenMinimal = proven,
            Proof = proven ? layout.Proof : ProofKind.None,
            ProofFigures = proven ? layout.ProofFigures : "",
        };
    }

    // Rolls end to end: a strip on which nothing may lie across the end of one.
    private static StripProblem InARow(SpanProblem problem, long length, int rolls)
    {
        StripProblem free = problem.At(SaleGoal.Within(Length.Zero));
        return free with
        {
            Flaws = [.. Enumerable.Range(0, rolls - 1).Select(roll => new GridRectangle(0, (roll * (length + 1)) + length, free.Width, 1))],
            Sale = new SaleLadder(length, length + 1, 1, 1),
        };
    }

    private static Placement OnItsRoll(Placement placed, long length) =>
        placed with
        {
            Sheet = (int)(placed.Y / (length + 1)),
            Y = placed.Y % (length + 1),
        };

    private static long Rolls(FabricLayout layout, Length length) =>
        layout.Fabric.Sold.StepsFor(FabricSale.Needed(layout.Fabric, length, layout.Start));

    private static bool Fits(CutPiece piece, Length width, Length length) =>
        (piece.Across <= width && piece.Along <= length)
        || (piece.Rotations == Rotations.QuarterTurns && piece.Along <= width && piece.Across <= length);
}
