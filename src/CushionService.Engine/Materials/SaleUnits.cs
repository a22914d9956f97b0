using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Materials;

/// <summary>The unit in which an item is bought, and quantities in it: the unit of its price, or the usual one of the order's system of units.</summary>
/// <param name="order">The order, for its prices and its units.</param>
internal sealed class SaleUnits(OrderSpecification order)
{
    private bool Imperial => order.Unit == LengthUnit.Inch;

    /// <summary>The unit of the item's price where the item is sold so; otherwise the usual one, and the price does not apply.</summary>
    public SaleUnit For(string item, SaleUnit usual, params ReadOnlySpan<SaleUnit> others) =>
        order.Prices.TryGetValue(item, out ItemPriceSpecification? price) && others.Contains(price.Per) ? price.Per : usual;

    /// <summary>Yards or metres.</summary>
    public SaleUnit ByLength => Imperial ? SaleUnit.Yd : SaleUnit.M;

    /// <summary>Square yards or square metres.</summary>
    public SaleUnit ByArea => Imperial ? SaleUnit.SqYd : SaleUnit.SqM;

    /// <summary>Pounds or kilograms.</summary>
    public SaleUnit ByWeight => Imperial ? SaleUnit.Lb : SaleUnit.Kg;

    /// <summary>A length in yards or metres, up to the item's step: where its price names none, 1/8 yd or 0.1 m.</summary>
    /// <remarks>Binary fractions of a yard and tenths of a metre are what measures show (NIST Handbook 44, section 5.52).</remarks>
    public decimal Sell(string item, Length length, SaleUnit unit) => unit == SaleUnit.Yd
        ? Sell(item, length.In(LengthUnit.Yard), unit, 0.125m)
        : Sell(item, length.In(LengthUnit.Metre), unit, 0.1m);

    /// <summary>An area in square yards or square metres, up to the item's step: where its price names none, a hundredth.</summary>
    public decimal Sell(string item, Area area, SaleUnit unit) =>
        Sell(item, (decimal)area.In(unit == SaleUnit.SqYd ? LengthUnit.Yard : LengthUnit.Metre), unit, 0.01m);

    /// <summary>A mass in pounds or kilograms, up to the item's step: where its price names none, a hundredth.</summary>
    public decimal Sell(string item, Mass mass, SaleUnit unit) => Sell(item, unit == SaleUnit.Lb ? mass.Pounds : mass.Kilograms, unit, 0.01m);

    /// <summary>A quantity up to the step of the item's price and no less than its minimum; up to the usual step where no price in the unit is known.</summary>
    public decimal Sell(string item, decimal needed, SaleUnit unit, decimal usualStep) =>
        order.Prices.TryGetValue(item, out ItemPriceSpecification? price) && price.Per == unit
            ? price.Sold(needed, usualStep)
            : Math.Ceiling(needed / usualStep) * usualStep;
}
