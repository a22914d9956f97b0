using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Intake;

/// <summary>How a fabric is sold by weight: a length is cut and weighed, and its weight goes up to what the scales show.</summary>
internal static class WeightSale
{
    // The same figures as the range of a sale by length has in metres.
    private const decimal Least = 0.01m;
    private const decimal Most = 100;

    // A figure that no fraction of the trade gives is taken to a gram, or to a thousandth of a pound.
    private const int Digits = 3;
    private const int LargestDenominator = 1_000;

    /// <summary>The rule of sale; null where it was refused.</summary>
    /// <param name="fabric">A fabric that is sold in kilograms or pounds, by itself or by its price book.</param>
    /// <param name="booked">What the price book says of it; null for nothing.</param>
    /// <param name="findings">Takes what is wrong with the fabric.</param>
    public static SaleRule? Of(Fabric fabric, ItemPriceSpecification? booked, Findings findings)
    {
        SaleUnit unit = fabric.Sold?.Unit ?? booked!.Per;
        // Only with what an area weighs does a length have a weight.
        if (fabric.Weight is null)
        {
            findings.Refuse(nameof(fabric.Weight), "required", FabricTexts.WeightRequired(unit));
        }

        Fraction? step = fabric.Sold is { } sale
                ? Amount(sale.Step, nameof(sale.Step), true, findings)
                : booked?.Step ?? FabricTrade.WeightStep,
            minimum = fabric.Sold is { } own
                ? Amount(own.Minimum, nameof(own.Minimum), false, findings)
                : booked?.Minimum ?? default(Fraction);
        return
            step is { } each
            && minimum is { } least
            && fabric.Weight is { } grams and >= 10 and <= 5000
            && fabric.Width is { } width
            && width.TryRead(findings.Unit, out Length across)
            && across > Length.Zero
            ? SaleRule.ByWeight(unit, each, least, new FabricWeight((decimal)grams, across))
            : null;
    }

    // Null where it was refused; zero where it may be left out, and is.
    private static Fraction? Amount(Measure? written, string field, bool required, Findings findings)
    {
        Findings at = findings.Within(nameof(Fabric.Sold));
        string words = FieldNames.Words(field);
        if (written is not { } measure)
        {
            if (required)
            {
                at.Refuse(field, "required", FieldTexts.Required(words));
            }

            return required ? null : default(Fraction);
        }

        var quantity = new Quantity(measure.Text, measure.IsNumber);
        if (!quantity.TryRead(out Fraction amount))
        {
            at.Refuse(field, "not-a-quantity", FieldTexts.NotAQuantity(words));
            return null;
        }

        decimal least = required ? Least : 0;
        if (amount < least || amount > Most)
        {
            at.Refuse(field, "out-of-range", FieldTexts.NumberRange(words, least, Most), new FindingRange((double)least, (double)Most));
            return null;
        }

        return amount.Denominator <= LargestDenominator ? amount : Fraction.Of(decimal.Round((decimal)amount, Digits));
    }
}
