using System.Text;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Layouts;

/// <summary>How much of a cloth to buy.</summary>
/// <param name="Layout">The layout that it serves.</param>
public sealed record Yardage(ClothLayout Layout)
{
    /// <summary>The length to buy.</summary>
    public Length Sold { get; } = ClothSale.Sold(Layout.Fabric, Layout.Length);

    /// <summary>The length to buy, in the cloth's unit of sale.</summary>
    public decimal SoldUnits => Sold.In(Layout.Fabric.Sold.LengthUnit);

    /// <summary>How the length comes about, in one line.</summary>
    /// <param name="unit">The unit of the lengths laid out.</param>
    public string Because(LengthUnit unit)
    {
        FabricSpecification fabric = Layout.Fabric;
        var line = new StringBuilder(LengthText.Format(Layout.Length, unit)).Append(" laid out");
        if (fabric.LengthShrinkage.Numerator > 0)
        {
            line.Append(" ÷ (1 − ").Append(Percent(fabric.LengthShrinkage)).Append(" shrinkage)");
        }

        if (fabric.Repeat is { } repeat)
        {
            line.Append(" + ").Append(LengthText.Format(repeat.Length, unit)).Append(" to start the repeat");
        }

        if (fabric.Squaring > Length.Zero)
        {
            line.Append(" + ").Append(LengthText.Format(fabric.Squaring, unit)).Append(" to square the ends");
        }

        LengthUnit sale = fabric.Sold.LengthUnit;
        Length needed = ClothSale.Needed(fabric, Layout.Length);
        if (needed != Layout.Length)
        {
            line.Append(" = ").Append(LengthText.Format(needed, unit));
        }

        line.Append(", up to the next ").Append(LengthText.Format(fabric.Sold.Step, sale));
        if (Sold > needed.RoundUpTo(fabric.Sold.Step))
        {
            line.Append(" and the least that is sold");
        }

        return line.Append(": ").Append(LengthText.Format(Sold, sale)).ToString();
    }

    private static string Percent(Fraction share)
    {
        decimal percent = 100m * (decimal)share.Numerator / (decimal)share.Denominator;
        return FormattableString.Invariant($"{percent:0.####} %");
    }
}
