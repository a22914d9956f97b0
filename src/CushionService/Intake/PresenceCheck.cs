using System.Reflection;

namespace CushionService.Intake;

/// <summary>Checks that a part is there. What it holds is checked by the part's own form.</summary>
/// <typeparam name="T">The record that has the part.</typeparam>
/// <param name="property">The property that holds it.</param>
internal sealed class PresenceCheck<T>(PropertyInfo property) : FieldCheck<T>(property)
{
    private readonly Func<T, object?> _get = Getters.Of<T, object?>(property);

    /// <inheritdoc />
    public override bool Passes(T record, int start, Findings findings) => _get(record) is not null || Missing(findings);
}
