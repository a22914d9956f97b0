using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Layouts;

/// <summary>How much of a fabric to buy.</summary>
/// <param name="Layout">The layout that it serves.</param>
public sealed record Yardage(FabricLayout Layout)
{
    /// <summary>What would be bought with straight welt; null where the order leaves no such choice.</summary>
    public WeltSaving? StraightWelt { get; init; }

    /// <summary>The length to buy.</summary>
    public Length Sold { get; } = FabricSale.Sold(Layout.Fabric, Layout.Length, Layout.Start);

    /// <summary>The length to buy, in the fabric's unit of sale, to 28 digits.</summary>
    public decimal SoldUnits => (decimal)SoldAmount.Units;

    /// <summary>The length to buy, in the fabric's unit of sale, exact.</summary>
    public SaleAmount SoldAmount => Layout.Fabric.Sold.Amount(SoldSteps);

    /// <summary>What would be bought at the best position of a motif that is unknown; null where it is known, or nothing is
    /// matched.</summary>
    /// <remarks>Never more than <see cref="Sold"/>: a search at one position may end with a longer layout than that for
    /// all of them.</remarks>
    public Length? SoldAtBest =>
        Layout.ShortestKnown is { } shortest ? Length.Min(FabricSale.Sold(Layout.Fabric, shortest, Length.Zero), Sold) : null;

    /// <summary>The same in the fabric's unit of sale, exact.</summary>
    public SaleAmount? SoldAmountAtBest =>
        Layout.ShortestKnown is { } shortest
            ? Layout.Fabric.Sold.Amount(
                Math.Min(Layout.Fabric.Sold.StepsFor(FabricSale.Needed(Layout.Fabric, shortest, Length.Zero)), SoldSteps)
            )
            : null;

    /// <summary>Share of the length to buy times the full width, selvedges and all, that no piece covers: 0 to 1.</summary>
    public double Waste => 1 - Layout.Covered.ShareOf(Area.Of(Layout.Fabric.Width, Sold));

    // In the steps of the fabric's rule of sale, so that a third of a metre stays exact.
    private long SoldSteps => Layout.Fabric.Sold.StepsFor(FabricSale.Needed(Layout.Fabric, Layout.Length, Layout.Start));

    /// <summary>How the length comes about, in one line.</summary>
    public Message Because
    {
        get
        {
            FabricSpecification fabric = Layout.Fabric;
            SaleRule sale = fabric.Sold;
            Length needed = FabricSale.Needed(fabric, Layout.Length, Layout.Start);
            return YardageTexts.Sold(
                Layout.Length,
                fabric.LengthShrinkage.Numerator > 0 ? fabric.LengthShrinkage : null,
                Layout.Start > Length.Zero ? Layout.Start : null,
                fabric.Squaring > Length.Zero ? fabric.Squaring : null,
                needed != Layout.Length ? needed : null,
                sale.Weight?.Of(needed, sale.Unit),
                sale.Weight?.GramsPerSquareMetre ?? 0,
                sale.Amount(1),
                SoldSteps == sale.LeastSteps && Sold - needed >= sale.Step,
                SoldAmount,
                // Only where the motif's place is unknown does the length cover more than one case.
                Layout.ShortestKnown
                    is not null
            );
        }
    }
}
