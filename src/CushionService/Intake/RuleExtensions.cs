using CushionService.Contract;
using CushionService.Engine.Messages;
using FluentValidation;
using FluentValidation.Results;

namespace CushionService.Intake;

/// <summary>Rules of our own for FluentValidation's validators.</summary>
internal static class RuleExtensions
{
    /// <summary>What the rule says where it is broken, instead of a sentence.</summary>
    /// <remarks>The message is the state of the failure (FluentValidation, "Custom State"). Nothing is put into words here.</remarks>
    /// <param name="rule">The rule.</param>
    /// <param name="message">What is wrong, and what would be right.</param>
    /// <param name="range">The range that the value broke.</param>
    public static IRuleBuilderOptions<T, TProperty> WithDetail<T, TProperty>(
        this IRuleBuilderOptions<T, TProperty> rule,
        Message message,
        FindingRange? range = null
    )
    {
        // One for all failures: it does not depend on the value.
        RuleDetail detail = new(message, range);
        return rule.WithState(_ => detail);
    }

    /// <summary>Reports a broken rule of a <c>Custom</c> validator.</summary>
    /// <param name="context">What is validated.</param>
    /// <param name="path">The place as a path of properties, such as <c>Stocks[0].Id</c>.</param>
    /// <param name="code">A stable word for programs.</param>
    /// <param name="message">What is wrong, and what would be right.</param>
    public static void Refuse<T>(this ValidationContext<T> context, string path, string code, Message message) =>
        context.AddFailure(new ValidationFailure(path, message.Key) { ErrorCode = code, CustomState = new RuleDetail(message) });

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
                // One entry is alone; most orders have one fabric and one cushion, and need no set.
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
                        context.Refuse(
                            $"{context.PropertyPath}[{i}].{field}",
                            "duplicate",
                            FieldTexts.Duplicate(FieldNames.Words(field), name, list)
                        );
                    }
                }
            }
        );
}
