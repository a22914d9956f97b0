using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;
using FluentValidation;
using FluentValidation.Results;

namespace CushionService.Intake;

/// <summary>Runs every rule over an order, and puts what they found into the words that both doors answer with.</summary>
internal static class OrderCheck
{
    private static readonly OrderValidator Validator = new();

    /// <summary>Every rule that the order breaks, and everything in it that is unwise, each in the order of its pointer.</summary>
    public static (ImmutableArray<Violation> Violations, ImmutableArray<Violation> Warnings) Run(Order order, OrderReading reading)
    {
        ValidationResult result = Validator.Check(order, reading);
        return (Of(result, Severity.Error), Of(result, Severity.Warning));
    }

    /// <summary>Every rule that a result says is broken.</summary>
    public static ImmutableArray<Violation> Broken(ValidationResult result) => Of(result, Severity.Error);

    private static ImmutableArray<Violation> Of(ValidationResult result, Severity severity) =>
        result.Errors.Count == 0
            ? []
            :
            [
                .. result
                    .Errors.Where(failure => failure.Severity == severity)
                    .Select(failure => new Violation(
                        FieldNames.Pointer(failure.PropertyName),
                        failure.ErrorCode,
                        failure.ErrorMessage,
                        (failure.CustomState as FindingRange)?.Minimum,
                        (failure.CustomState as FindingRange)?.Maximum
                    ))
                    .DistinctBy(violation => (violation.Pointer, violation.Code))
                    .OrderBy(violation => violation.Pointer, StringComparer.Ordinal)
                    .ThenBy(violation => violation.Code, StringComparer.Ordinal),
            ];
}
