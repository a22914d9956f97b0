using System.Reflection;
using CushionService.Contract;

namespace CushionService.Intake;

/// <summary>Checks the range of a number: a count, a share, an angle, or a figure with a unit of its own, as kg/m³.</summary>
/// <typeparam name="T">The record that has the number.</typeparam>
/// <param name="property">The property that holds it.</param>
/// <remarks>Every number is finite by now: JSON has no other, and gRPC's are refused when they are read.</remarks>
internal sealed class NumberCheck<T>(PropertyInfo property) : FieldCheck<T>(property)
{
    private readonly Func<T, double?> _get = Getters.Of<T, double?>(property);
    private readonly NumberRangeAttribute? _range = property.GetCustomAttribute<NumberRangeAttribute>();

    /// <inheritdoc />
    public override bool Passes(T record, int start, Findings findings) =>
        _get(record) is not { } number
            ? Missing(findings)
            : _range is not { } range
                || (number >= range.Minimum && number <= range.Maximum)
                || Fails(
                    findings,
                    "out-of-range",
                    FieldTexts.NumberRange(Words, (decimal)range.Minimum, (decimal)range.Maximum),
                    new FindingRange(range.Minimum, range.Maximum)
                );
}
