using System.Reflection;
using CushionService.Contract;
using CushionService.Engine.Measures;

namespace CushionService.Intake;

/// <summary>Checks that a number or a text is a quantity, and within its range.</summary>
/// <typeparam name="T">The record that has the quantity.</typeparam>
/// <param name="property">The property that holds it, with a range.</param>
internal sealed class QuantityCheck<T>(PropertyInfo property) : FieldCheck<T>(property)
{
    private readonly Func<T, Quantity?> _get = Getters.Of<T, Quantity?>(property);
    private readonly NumberRangeAttribute _range = property.GetCustomAttribute<NumberRangeAttribute>()!;

    /// <inheritdoc />
    public override bool Passes(T record, int start, Findings findings)
    {
        if (_get(record) is not { } quantity)
        {
            return Missing(findings);
        }

        (decimal minimum, decimal maximum) = ((decimal)_range.Minimum, (decimal)_range.Maximum);
        bool isNegative = quantity.Text.StartsWith('-');
        if (!isNegative && !quantity.TryRead(out _) && !quantity.IsNumber)
        {
            return Fails(findings, "not-a-quantity", FieldTexts.NotAQuantity(Words));
        }

        return quantity.TryRead(out Fraction read) && read >= minimum && read <= maximum
            || Fails(
                findings,
                "out-of-range",
                FieldTexts.NumberRange(Words, minimum, maximum),
                new FindingRange(_range.Minimum, _range.Maximum)
            );
    }
}
