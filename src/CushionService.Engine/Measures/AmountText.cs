using System.Globalization;

namespace CushionService.Engine.Measures;

/// <summary>Prints areas, weights and numbers in the system of units of an order.</summary>
internal static class AmountText
{
    /// <summary>An area in square inches, centimetres or millimetres.</summary>
    /// <param name="squareMillimetres">The area.</param>
    /// <param name="unit">The order's unit of length.</param>
    public static string Area(decimal squareMillimetres, LengthUnit unit)
    {
        decimal side = Length.From(1, unit).In(LengthUnit.Millimetre);
        return $"{Number(decimal.Round(squareMillimetres / (side * side), 2, MidpointRounding.AwayFromZero))} {LengthText.Symbol(unit)}²";
    }

    /// <summary>A weight in pounds to the hundredth, or in kilograms to the gram.</summary>
    public static string Weight(Mass mass, LengthUnit unit) =>
        unit == LengthUnit.Inch
            ? FormattableString.Invariant($"{mass.Pounds:0.00} lb")
            : FormattableString.Invariant($"{mass.Kilograms:0.000} kg");

    /// <summary>A force in whole pounds of force, or newtons.</summary>
    public static string Firmness(Force force, LengthUnit unit) =>
        unit == LengthUnit.Inch
            ? FormattableString.Invariant($"{force.Pounds:0} lbf")
            : FormattableString.Invariant($"{force.Newtons:0} N");

    /// <summary>A volume in cubic feet, or in litres.</summary>
    public static string Volume(Volume volume, LengthUnit unit) =>
        unit == LengthUnit.Inch ? $"{Number(volume.CubicFeet)} ft³" : $"{Number(volume.CubicMillimetres / 1_000_000)} l";

    /// <summary>A number with at most three decimals.</summary>
    public static string Number(decimal number) => number.ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>The symbol of a unit of sale.</summary>
    public static string Symbol(SaleUnit unit) =>
        unit switch
        {
            SaleUnit.SqYd => "yd²",
            SaleUnit.SqM => "m²",
            _ => unit.ToString().ToLowerInvariant(),
        };
}
