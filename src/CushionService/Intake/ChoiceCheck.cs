using System.Reflection;

namespace CushionService.Intake;

/// <summary>Checks that a choice is a member of its enumeration: a number that gRPC lets through may be none.</summary>
/// <typeparam name="T">The record that has the choice.</typeparam>
/// <typeparam name="TChoice">The enumeration.</typeparam>
/// <param name="property">The property that holds it.</param>
internal sealed class ChoiceCheck<T, TChoice>(PropertyInfo property) : FieldCheck<T>(property)
    where TChoice : struct, Enum
{
    private readonly Func<T, TChoice?> _get = Getters.Of<T, TChoice?>(property);

    /// <inheritdoc />
    public override bool Passes(T record, int start, Findings findings) =>
        _get(record) is not { } choice
            ? Missing(findings)
            : Enum.IsDefined(choice) || Fails(findings, "unknown-value", FieldTexts.Choices(Words, Contract.Words<TChoice>.All));
}
