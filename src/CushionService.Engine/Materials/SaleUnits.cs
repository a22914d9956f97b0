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

    /// <summary>A length in yards, up to the next 1/8, or in metres, up to the next 0.1.</summary>
    /// <remarks>Binary fractions of a yard and tenths of a metre are what measures show (NIST Handbook 44, section 5.52).</remarks>
    public static decimal Sell(Length length, SaleUnit unit) => unit == SaleUnit.Yd
        ? length.RoundUpTo(Length.FromInches(4.5m)).In(LengthUnit.Yard)
        : length.RoundUpTo(Length.FromMillimetres(100)).In(LengthUnit.Metre);

    /// <summary>An area in square yards or square metres, up to the next hundredth.</summary>
    public static decimal Sell(Area area, SaleUnit unit) =>
        Math.Ceiling((decimal)area.In(unit == SaleUnit.SqYd ? LengthUnit.Yard : LengthUnit.Metre) * 100) / 100;

    /// <summary>A mass in pounds or kilograms, up to the next hundredth.</summary>
    public static decimal Sell(Mass mass, SaleUnit unit) =>
        Math.Ceiling((unit == SaleUnit.Lb ? mass.Pounds : mass.Kilograms) * 100) / 100;
}
