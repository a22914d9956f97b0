using System.Reflection;
using CushionService.Contract;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;

namespace CushionService.Intake;

/// <summary>Checks that a text or a number is a length, and within its limits; and keeps the length, so that it is read once.</summary>
/// <typeparam name="T">The record that has the length.</typeparam>
/// <param name="property">The property that holds it.</param>
internal sealed class LengthCheck<T>(PropertyInfo property) : FieldCheck<T>(property)
{
    // Decimals that a limit is shown with.
    private const int Decimals = 4;

    private readonly Func<T, Measure?> _get = Getters.Of<T, Measure?>(property);
    private readonly LengthLimits? _limits = LengthLimits.Of(property);

    /// <inheritdoc />
    public override bool Passes(T record, int start, Findings findings)
    {
        if (_get(record) is not { } measure)
        {
            return Missing(findings);
        }

        // What is a length in millimetres may be too long to be read in yards.
        bool isRead = measure.TryRead(findings.Unit, out Length length);
        if (!isRead && (_limits is null || !measure.TryRead(LengthUnit.Millimetre, out _)))
        {
            return Fails(findings, "not-a-length", FieldDetails.Unread(Words, measure));
        }

        // Limits are round figures in the order's system, and both ends are allowed.
        if (_limits?.In(findings.Unit) is var (minimum, maximum) && (!isRead || length < minimum || length > maximum))
        {
            findings.RefuseRange(Property.Name, "out-of-range", Range(minimum, maximum, findings.Unit), minimum, maximum);
            return false;
        }

        findings.Lengths[start + Slot] = length;
        return true;
    }

    // What is sold is shown in its unit of sale, whatever the order's unit is.
    private Message Range(Length minimum, Length maximum, LengthUnit unit) =>
        unit switch
        {
            LengthUnit.Yard => FieldTexts.SaleRange(Words, Shown(minimum, unit), Shown(maximum, unit), SaleUnit.Yd),
            LengthUnit.Metre => FieldTexts.SaleRange(Words, Shown(minimum, unit), Shown(maximum, unit), SaleUnit.M),
            _ => FieldTexts.LengthRange(Words, minimum, maximum),
        };

    private static decimal Shown(Length length, LengthUnit unit) => decimal.Round(length.In(unit), Decimals, MidpointRounding.AwayFromZero);
}
