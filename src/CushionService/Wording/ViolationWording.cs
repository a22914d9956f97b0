using System.Collections.Immutable;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;

namespace CushionService.Wording;

/// <summary>Puts violations and warnings into words. REST, gRPC and the streams all write them by this class, so that the same violation
/// reads the same everywhere.</summary>
internal static class ViolationWording
{
    /// <summary>The violations of a refusal, in its order's unit and its reader's language.</summary>
    /// <param name="refusal">Why an order has no answer.</param>
    /// <param name="language">The reader's language.</param>
    public static ImmutableArray<ViolationAnswer> Of(Refusal refusal, Language language) => Of(refusal.Violations, language, refusal.Unit);

    /// <summary>Violations or warnings, in their order.</summary>
    /// <param name="violations">The violations.</param>
    /// <param name="language">The reader's language.</param>
    /// <param name="unit">The unit of lengths in sentences: the order's.</param>
    public static ImmutableArray<ViolationAnswer> Of(IReadOnlyCollection<Violation> violations, Language language, LengthUnit unit)
    {
        if (violations.Count == 0)
        {
            return [];
        }

        MessageWriter writer = new(language, unit);
        return [.. violations.Select(violation => Of(violation, writer, unit))];
    }

    private static ViolationAnswer Of(Violation violation, MessageWriter writer, LengthUnit unit) =>
        new(violation.Pointer, violation.Code, writer.Text(violation.Detail), violation.Minimum, violation.Maximum)
        {
            Key = violation.Detail.Key,
            Arguments = ArgumentWording.Of(violation.Detail, unit),
        };
}
