using FluentValidation;

namespace CushionService.Validation;

/// <summary>The rules that a contract record's attributes state: what is required, ranges of lengths and numbers, forms of text. The OpenAPI
/// document and the catalogue read the same attributes.</summary>
internal static class AttributeRules
{
    /// <summary>The rules of every property of <typeparamref name="T"/>.</summary>
    public static Action<T, ValidationContext<T>> Of<T>()
    {
        FieldCheck<T, T>[] checks = FieldCheck<T, T>.All("");
        return (instance, context) => Run(checks, instance, context);
    }

    /// <summary>The attributes' rules of a part that has no others, where there is one.</summary>
    /// <param name="name">The property that holds it.</param>
    /// <param name="get">Gets it.</param>
    public static Action<T, ValidationContext<T>> Part<T, TPart>(string name, Func<T, TPart?> get)
        where TPart : class
    {
        FieldCheck<T, TPart>[] checks = FieldCheck<T, TPart>.All(name + ".");
        return (instance, context) =>
        {
            if (get(instance) is { } part)
            {
                Run(checks, part, context);
            }
        };
    }

    private static void Run<TRoot, TPart>(FieldCheck<TRoot, TPart>[] checks, TPart part, ValidationContext<TRoot> context)
    {
        foreach (FieldCheck<TRoot, TPart> check in checks)
        {
            check.Run(part, context);
        }
    }
}
