using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Fitting;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Tests.Fitting;

/// <summary>Plain pieces on several offcuts that do not hold them all: what is left to buy.</summary>
public sealed class OffcutFacts
{
    /// <summary>Sizes in inches on a bolt of 54 in, sold by 1/8 yd: offcuts, pieces that may not turn, and what is sold. Each is seen by
    /// hand.</summary>
    public static TheoryData<string, (int, int)[], (int, int)[], decimal> Cases =>
        new()
        {
            // The square takes the small offcut and the strip the wide one; the other way round the strip is bought too.
            { "the wide offcut is kept for the strip", [(54, 20), (20, 20)], [(50, 60), (18, 18), (54, 5)], 1.75m },
            // Small offcuts first would give the squares of 10 the only place of the square of 20.
            { "the large offcut is kept for what no other holds", [(20, 20), (10, 10)], [(20, 20), (10, 10), (54, 36)], 1m },
            // Two lie in each offcut of their own width; the longest is bought.
            { "each lies in what it just fills", [(30, 10), (12, 40)], [(30, 10), (12, 20), (12, 20), (54, 45)], 1.25m },
        };

    [Theory]
    [MemberData(nameof(Cases))]
    public void What_is_bought_is_what_no_use_of_the_offcuts_could_save(string name, (int, int)[] onHand, (int, int)[] sizes, decimal sold)
    {
        Assert.NotNull(name);
        FabricSpecification fabric = Fabric with
        {
            Selvedge = Length.Zero,
            OnHand = [.. onHand.Select(one => new OffcutSpecification(In(one.Item1), In(one.Item2)))],
        };
        ImmutableArray<CutPiece> pieces =
        [
            .. sizes.Select(
                (size, i) =>
                    CutPiece.Of(
                        new LoosePieceSpecification(
                            $"piece-{i}",
                            "/pieces/0",
                            fabric.Id,
                            1,
                            In(size.Item1),
                            In(size.Item2),
                            Rotations.HalfTurn,
                            []
                        ),
                        fabric
                    )
            ),
        ];

        OffcutFit fit = OffcutFit.Of(fabric, pieces, Effort.Quick, 1, CancellationToken.None);

        ImmutableArray<CutPiece> left = [.. fit.Unplaced.Select(rest => rest.Piece with { Quantity = rest.Copies })];
        FabricShortfall bought = FabricShortfall.Of(fabric, left, Effort.Quick, 1, CancellationToken.None)!;
        Assert.Equal(sold, bought.Yardage.SoldUnits);
    }
}
