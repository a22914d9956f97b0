using CushionService.Contract.Orders;
using FluentValidation;

namespace CushionService.Intake;

/// <summary>The rules of an order that is sent with candidates for its fabrics.</summary>
/// <remarks>Each option is quoted as an order of its own, so that the number of options bounds what a comparison costs. The fields of an
/// option are checked when it is quoted.</remarks>
internal sealed class ComparisonValidator : AbstractValidator<Order>
{
    // Each takes as long as a quote of its own.
    private const int MostOptions = 40;

    /// <summary>The rules.</summary>
    public ComparisonValidator()
    {
        RuleFor(order => order.Candidates).NotEmpty().WithErrorCode("required").WithDetail(OrderTexts.CandidateRequired);
        RuleFor(order => order.Candidates)
            .Must(candidates => (candidates ?? []).Sum(candidate => candidate?.Options?.Count ?? 0) <= MostOptions)
            .WithErrorCode("out-of-range")
            .WithDetail(OrderTexts.TooManyOptions(MostOptions), new FindingRange(null, MostOptions));
        RuleForEach(order => order.Candidates)
            .ChildRules(candidate =>
                candidate
                    .RuleForEach(fabric => fabric.Options)
                    .ChildRules(option =>
                        option
                            .RuleFor(fabric => fabric.OnHand)
                            .Null()
                            .WithErrorCode("not-applicable")
                            .WithDetail(OrderTexts.OnHandElsewhere)
                    )
            );
        RuleForEach(order => order.Candidates).Custom(NamesAFabric);
    }

    // A candidate is quoted instead of a fabric of the order, which must be there.
    private static void NamesAFabric(Candidate? candidate, ValidationContext<Order> context)
    {
        if (candidate?.Fabric is { } id && (context.InstanceToValidate.Fabrics ?? []).All(fabric => fabric?.Id != id))
        {
            string path = $"{context.PropertyPath}.{nameof(candidate.Fabric)}";
            context.Refuse(path, "unknown-fabric", OrderTexts.UnknownFabric(id));
        }
    }
}
