using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;

namespace CushionService.Intake;

/// <summary>The rules of how a fabric is sold.</summary>
internal sealed class SaleValidator : RecordValidator<Sale>
{
    private static readonly Length ShortestStep = Length.FromMillimetres(10);
    private static readonly Length LongestStep = Length.From(10, LengthUnit.Metre);
    private static readonly Length LongestMinimum = Length.From(100, LengthUnit.Metre);

    public SaleValidator()
        : base(
            AttributeRules.Of<Sale>(),
            (sale, findings) =>
            {
                if (sale.Unit is { } unit && unit is not (SaleUnit.Yd or SaleUnit.M))
                {
                    findings.Refuse(nameof(Sale.Unit), "not-combinable", "Fabric is sold by the yd or by the m.");
                }

                Within(sale, sale.Step, ShortestStep, LongestStep, nameof(Sale.Step), findings);
                Within(sale, sale.Minimum, Length.Zero, LongestMinimum, nameof(Sale.Minimum), findings);
            }
        ) { }

    // Numbers are in the unit of sale here, and so is the range that is reported.
    private static void Within(Sale sale, Measure? measure, Length minimum, Length maximum, string field, Findings findings)
    {
        LengthUnit unit = SaleReading.UnitOf(sale);
        // What is a length in inches may be none in yards: longer than any that can be read.
        bool isLength = findings.Reading.Length(measure) is not null;
        if (isLength && (OrderReading.Length(measure, unit) is not { } length || length < minimum || length > maximum))
        {
            findings.Refuse(
                field,
                "out-of-range",
                $"{FieldNames.Words(field)} must be between {LengthText.Format(minimum, unit)} and {LengthText.Format(maximum, unit)}.",
                new FindingRange((double)minimum.In(unit), (double)maximum.In(unit))
            );
        }
    }
}
