
namespace CushionService.Validation;

/// <summary>The rules that a contract record's attributes state: what is required, ranges of lengths and numbers, forms of text. The OpenAPI
/// document and the catalogue read the same attributes.</summary>
internal static class AttributeRules
{
    /// <summary>The rules of every property of <typeparamref name="T"/>.</summary>
    public static Action<T, Findings> Of<T>()
    {
        FieldCheck<T>[] checks = FieldCheck<T>.All("");
        return (instance, findings) => Run(checks, instance, findings);
    }

    /// <summary>The attributes' rules of a part that has no others, where there is one.</summary>
    /// <param name="name">The property that holds it.</param>
    /// <param name="get">Gets it.</param>
    public static Action<T, Findings> Part<T, TPart>(string name, Func<T, TPart?> get)
        where TPart : class
    {
        FieldCheck<TPart>[] checks = FieldCheck<TPart>.All(name + ".");
        return (instance, findings) =>
        {
            if (get(instance) is { } part)
            {
                Run(checks, part, findings);
            }
        };
    }

    private static void Run<T>(FieldCheck<T>[] checks, T part, Findings findings)
    {
        foreach (FieldCheck<T> check in checks)
        {
            check.Run(part, findings);
        }
    }
}
