using CushionService.Contract.Orders;
using CushionService.Engine.Measures;

namespace CushionService.Specifying;

/// <summary>Reads how a cloth is sold. Its numbers are in its own unit of sale, not in the order's.</summary>
internal static class SaleReading
{
    public static Length? Step(Sale sale) => OrderReading.Length(sale.Step, UnitOf(sale));

    public static Length? Minimum(Sale sale) => sale.Minimum is null ? Step(sale) : OrderReading.Length(sale.Minimum, UnitOf(sale));

    /// <summary>The rule; null when a part of it is missing or cannot be read.</summary>
    public static SaleRule? Rule(Sale sale) =>
        sale.Unit is { } unit && Step(sale) is { } step && Minimum(sale) is { } minimum ? new SaleRule(unit, step, minimum) : null;

    public static LengthUnit UnitOf(Sale sale) => sale.Unit == SaleUnit.M ? LengthUnit.Metre : LengthUnit.Yard;
}
