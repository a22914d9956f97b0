using System.Globalization;
using CushionService.Engine.Measures;

namespace CushionService.Documents;

/// <summary>Prints bought quantities: yards as fractions, everything else as decimals.</summary>
internal static class SaleText
{
    /// <summary>A quantity with its unit: <c>1 5/8 yd</c>, <c>0.75 kg</c>; just the number for things sold one by one.</summary>
    public static string Of(double quantity, SaleUnit unit) =>
        unit switch
        {
            SaleUnit.Yd => OrderUnits.Unbroken(LengthText.Format(Length.From((decimal)quantity, LengthUnit.Yard), LengthUnit.Yard)),
            SaleUnit.M => $"{Number(quantity)}\u00A0m",
            SaleUnit.Lb => $"{Number(quantity)}\u00A0lb",
            SaleUnit.Kg => $"{Number(quantity)}\u00A0kg",
            SaleUnit.SqYd => $"{Number(quantity)}\u00A0yd²",
            SaleUnit.SqM => $"{Number(quantity)}\u00A0m²",
            _ => Number(quantity),
        };

    // What a shop cuts in another unit, of a metre and of a yard.
    private const decimal MetreStep = 0.05m;
    private const decimal YardStep = 0.125m;

    /// <summary>A length that is sold in one unit, in another, up to the next 5 cm or eighth of a yard, as a shop cuts it: buying by it
    /// never falls short.</summary>
    /// <returns>Null when the quantity is not a length.</returns>
    public static string? As(LengthUnit other, double quantity, SaleUnit unit)
    {
        LengthUnit? sold = unit switch
        {
            SaleUnit.Yd => LengthUnit.Yard,
            SaleUnit.M => LengthUnit.Metre,
            _ => null,
        };
        if (sold is not { } own)
        {
            return null;
        }

        if (own == other)
        {
            return Of(quantity, unit);
        }

        decimal step = other == LengthUnit.Yard ? YardStep : MetreStep;
        decimal needed = Math.Ceiling(Length.From((decimal)quantity, own).In(other) / step) * step;
        return Of((double)needed, other == LengthUnit.Yard ? SaleUnit.Yd : SaleUnit.M);
    }

    private static string Number(double quantity) => ((decimal)quantity).ToString("0.####", CultureInfo.InvariantCulture);
}
