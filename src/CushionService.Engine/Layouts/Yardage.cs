using CushionService.Engine.Measures;
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
    public decimal SoldUnits
    {
        get
        {
            Fraction units = Layout.Fabric.Sold.Units(SoldSteps);
            return (decimal)units.Numerator / (decimal)units.Denominator;
        }
    }

    /// <summary>The length to buy in words, in the fabric's unit of sale: "1 1/2 yd", "3 1/3 m".</summary>
    public string SoldText => SoldAmount.ToString();

    /// <summary>The length to buy, in the fabric's unit of sale, exact.</summary>
    public SaleAmount SoldAmount => Layout.Fabric.Sold.Amount(SoldSteps);

    /// <summary>What would be bought at the best position of a motif that is unknown; null where it is known, or nothing is
    /// matched.</summary>
    public Length? SoldAtBest =>
        Layout.ShortestKnown is { } shortest ? Length.Min(FabricSale.Sold(Layout.Fabric, shortest, Length.Zero), Sold) : null;

    // Only where the motif's place is unknown does the length cover more than one case.
    private string Positions => Layout.ShortestKnown is null ? "" : ", enough wherever the first motif is";

    // In the steps of the fabric's rule of sale, so that a third of a metre stays exact.
    private long SoldSteps => Layout.Fabric.Sold.StepsFor(FabricSale.Needed(Layout.Fabric, Layout.Length, Layout.Start));

    /// <summary>How the length comes about, in one line.</summary>
    /// <param name="unit">The unit of the lengths laid out.</param>
    public string Because(LengthUnit unit)
    {
        FabricSpecification fabric = Layout.Fabric;
        SaleRule sale = fabric.Sold;
        Length needed = FabricSale.Needed(fabric, Layout.Length, Layout.Start);
        string shrunk = fabric.LengthShrinkage.Numerator > 0 ? $" ÷ (1 − {Percent(fabric.LengthShrinkage)} shrinkage)" : "";
        string started = Layout.Start > Length.Zero ? $" + {LengthText.Format(Layout.Start, unit)} to start the repeat" : "";
        string squared = fabric.Squaring > Length.Zero ? $" + {LengthText.Format(fabric.Squaring, unit)} to square the ends" : "";
        string sum = needed != Layout.Length ? $" = {LengthText.Format(needed, unit)}" : "";
        string least = SoldSteps == sale.LeastSteps && Sold - needed >= sale.Step ? " and the least that is sold" : "";
        return $"{LengthText.Format(Layout.Length, unit)} laid out{shrunk}{started}{squared}{sum}"
            + $", up to the next {sale.Text(1)}{least}: {SoldText}{Positions}";
    }

    // To four places, with a decimal point in every language.
    private static string Percent(Fraction share)
    {
        decimal percent = 100m * (decimal)share.Numerator / (decimal)share.Denominator;
        return FormattableString.Invariant($"{percent:0.####} %");
    }
}
