using CushionService.Contract;
using FluentValidation;
using FluentValidation.Results;

namespace CushionService.Intake;

/// <summary>Rules of our own for FluentValidation's validators.</summary>
internal static class RuleExtensions
{
    /// <summary>No two entries of a list have the same name; the second is reported.</summary>
    /// <typeparam name="T">The record that has the list.</typeparam>
    /// <typeparam name="TEntry">What the list holds.</typeparam>
    /// <param name="rule">The rule of the list.</param>
    /// <param name="nameOf">Gets an entry's name; null where it has none.</param>
    /// <param name="field">The entry's property that holds the name.</param>
    public static IRuleBuilderOptionsConditions<T, IReadOnlyList<TEntry>?> Distinct<T, TEntry>(
        this IRuleBuilder<T, IReadOnlyList<TEntry>?> rule,
        Func<TEntry?, string?> nameOf,
        string field
    ) =>
        rule.Custom(
            (entries, context) =>
            {
                if (entries is not { Count: > 1 })
                {
                    return;
                }

                var seen = new HashSet<string>(StringComparer.Ordinal);
                for (int i = 0; i < entries.Count; i++)
                {
                    if (nameOf(entries[i]) is { } name && !seen.Add(name))
                    {
                        string list = FieldNames.Json(context.PropertyPath.Split('.')[^1]);
                        string detail = $"{FieldNames.Words(field)} {name} is used twice in {list}. Each must be different.";
                        context.AddFailure(
                            new ValidationFailure($"{context.PropertyPath}[{i}].{field}", detail) { ErrorCode = "duplicate" }
                        );
                    }
                }
            }
        );
}
