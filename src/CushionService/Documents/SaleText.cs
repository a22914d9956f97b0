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

    /// <summary>A length that is sold in one unit, in another, up to the next thousandth: buying by it never falls short.</summary>
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

        decimal thousandths = Math.Ceiling(Length.From((decimal)quantity, own).In(other) * 1000);
        return own == other
            ? Of(quantity, unit)
            : $"{(thousandths / 1000).ToString("0.###", CultureInfo.InvariantCulture)}\u00A0{LengthText.Symbol(other)}";
    }

    private static string Number(double quantity) => ((decimal)quantity).ToString("0.####", CultureInfo.InvariantCulture);
}
