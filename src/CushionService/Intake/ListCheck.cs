using System.Collections;
using System.Reflection;
using CushionService.Contract;

namespace CushionService.Intake;

/// <summary>Checks how many entries a list has. Each entry is checked by its own form.</summary>
/// <typeparam name="T">The record that has the list.</typeparam>
/// <param name="property">The property that holds it.</param>
/// <remarks>Where one entry is enough, an empty list has a code of its own; any other number is out of range.</remarks>
internal sealed class ListCheck<T>(PropertyInfo property) : FieldCheck<T>(property)
{
    private readonly Func<T, object?> _get = Getters.Of<T, object?>(property);
    private readonly NumberRangeAttribute? _range = property.GetCustomAttribute<NumberRangeAttribute>();

    /// <inheritdoc />
    public override bool Passes(T record, int start, Findings findings)
    {
        if (_get(record) is not { } list)
        {
            return Missing(findings);
        }

        if (_range is not { } range || ((ICollection)list).Count is var count && count >= range.Minimum && count <= range.Maximum)
        {
            return true;
        }

        return Fails(
            findings,
            count > range.Maximum || range.Minimum > 1 ? "out-of-range" : "empty",
            FieldTexts.ListRange(Words, (decimal)range.Minimum, (decimal)range.Maximum, count, count > range.Maximum),
            new FindingRange(range.Minimum, range.Maximum)
        );
    }
}
