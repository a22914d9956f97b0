using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Quoting;

/// <summary>What must be bought of a fabric beyond what is on hand.</summary>
/// <param name="Yardage">The length, as it is sold.</param>
public sealed record FabricShortfall(Yardage Yardage)
{
    /// <summary>The fabric.</summary>
    public FabricSpecification Fabric => Yardage.Layout.Fabric;

    /// <summary>What it costs, with the fee for its cut; null where it has no price.</summary>
    public Money? Amount =>
        Fabric is { CustomerOwned: false, Price: { } price } && price.Per == Fabric.Sold.Unit
            ? Priced((Yardage.SoldAmount.Units * price.UnitPrice(Yardage.SoldAmount.Units)).RoundHalfUp(), price.CutFee)
            : null;

    /// <summary>What would hold pieces that found no place.</summary>
    /// <param name="fabric">The fabric.</param>
    /// <param name="pieces">The pieces, each as many as found no place.</param>
    /// <param name="effort">How hard to search.</param>
    /// <param name="sharedBy">How many searches share the effort's steps.</param>
    /// <param name="cancellation">Cancels the search.</param>
    /// <returns>Null where there is nothing to buy, or a piece is wider than the fabric.</returns>
    public static FabricShortfall? Of(
        FabricSpecification fabric,
        ImmutableArray<CutPiece> pieces,
        Effort effort,
        int sharedBy,
        CancellationToken cancellation
    )
    {
        FabricSpecification bolt = fabric with { OnHand = [] };
        // On the bolt, and not on what is on hand: what found no place there is laid by itself.
        return pieces.IsEmpty || !pieces.All(piece => FabricNesting.Fits(bolt, piece))
            ? null
            : new FabricShortfall(new Yardage(FabricNesting.LayOut(bolt, pieces, effort, sharedBy, cancellation)));
    }

    private static Money Priced(Money amount, Money? fee) => fee is { } cut ? amount + cut.RoundHalfUp() : amount;
}
