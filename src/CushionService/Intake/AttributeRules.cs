using System.Numerics;

namespace CushionService.Intake;

/// <summary>The rules that a contract record's attributes state: what is required, ranges of lengths and numbers, forms of text. The OpenAPI
/// document and the catalogue read the same attributes.</summary>
internal static class AttributeRules
{
    /// <summary>The rules of every property of <typeparamref name="T"/>.</summary>
    public static Action<T, Findings> Of<T>() => Of<T>("");

    /// <summary>The attributes' rules of a part that has no others, where there is one.</summary>
    /// <param name="name">The property that holds it.</param>
    /// <param name="get">Gets it.</param>
    public static Action<T, Findings> Part<T, TPart>(string name, Func<T, TPart?> get)
        where TPart : class
    {
        Action<TPart, Findings> rules = Of<TPart>(name + ".");
        return (instance, findings) =>
        {
            if (get(instance) is { } part)
            {
                rules(part, findings);
            }
        };
    }

    // A field that is left out breaks a rule only where it is required: most are left out, and are passed over together.
    private static Action<T, Findings> Of<T>(string place)
    {
        FieldCheck<T>[] checks = FieldCheck<T>.All(place);
        Func<T, ulong> given = Getters.Given<T>([.. checks.Select(check => check.Property)]);
        ulong required = checks.Index().Where(check => check.Item.IsRequired).Aggregate(0UL, (sum, check) => sum | (1UL << check.Index));
        return (instance, findings) =>
        {
            for (ulong rest = given(instance) | required; rest != 0; rest &= rest - 1)
            {
                checks[BitOperations.TrailingZeroCount(rest)].Run(instance, findings);
            }
        };
    }
}
