using CushionService.Contract.Orders;
using CushionService.Engine.Measures;

namespace CushionService.Intake;

/// <summary>Reads how a fabric is sold. Its numbers are in its own unit of sale, not in the order's.</summary>
internal static class SaleReading
{
    // What measures show (NIST Handbook 44, section 5.52).
    private const decimal UsualYards = 0.125m;
    private const decimal UsualMetres = 0.1m;

    public static Length? Step(Sale sale) => OrderReading.Length(sale.Step, UnitOf(sale));

    public static Length? Minimum(Sale sale) => sale.Minimum is null ? Step(sale) : OrderReading.Length(sale.Minimum, UnitOf(sale));

    /// <summary>The rule; null when a part of it is missing or cannot be read.</summary>
    public static SaleRule? Rule(Sale sale) =>
        sale.Unit is { } unit && Step(sale) is { } step && Minimum(sale) is { } minimum ? new SaleRule(unit, step, minimum) : null;

    /// <summary>The rule of a fabric: its own, or its price book's; null when neither can be read.</summary>
    public static SaleRule? Rule(Fabric fabric, OrderReading order) => fabric.Sold is { } sold ? Rule(sold) : InBook(fabric, order);

    /// <summary>How the order's price book sells a fabric; null when it does not sell it by length.</summary>
    public static SaleRule? InBook(Fabric fabric, OrderReading order)
    {
        if (PriceReading.InBook(fabric, order) is not { Per: SaleUnit.Yd or SaleUnit.M } price)
        {
            return null;
        }

        LengthUnit unit = price.Per == SaleUnit.M ? LengthUnit.Metre : LengthUnit.Yard;
        Length step = Length.From(price.Step ?? (price.Per == SaleUnit.M ? UsualMetres : UsualYards), unit);
        return new SaleRule(price.Per, step, price.Minimum is { } minimum ? Length.From(minimum, unit) : step);
    }

    public static LengthUnit UnitOf(Sale sale) => sale.Unit == SaleUnit.M ? LengthUnit.Metre : LengthUnit.Yard;
}
