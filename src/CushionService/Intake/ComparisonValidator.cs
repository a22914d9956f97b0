using CushionService.Contract.Orders;
using FluentValidation;
using FluentValidation.Results;

namespace CushionService.Intake;

/// <summary>The rules of an order that is sent with candidates for its fabrics.</summary>
internal sealed class ComparisonValidator : AbstractValidator<Order>
{
    private const int MostOptions = 40;

    public ComparisonValidator()
    {
        RuleFor(order => order.Candidates).NotEmpty().WithErrorCode("required").WithMessage("A comparison needs at least one candidate.");
        RuleFor(order => order.Candidates)
            .Must(candidates => (candidates ?? []).Sum(candidate => candidate?.Options?.Count ?? 0) <= MostOptions)
            .WithErrorCode("out-of-range")
            .WithMessage($"A comparison may have at most {MostOptions} options.")
            .WithState(_ => new FindingRange(null, MostOptions));
        RuleForEach(order => order.Candidates)
            .ChildRules(candidate =>
                candidate
                    .RuleForEach(fabric => fabric.Options)
                    .ChildRules(option =>
                        option
                            .RuleFor(fabric => fabric.OnHand)
                            .Null()
                            .WithErrorCode("not-applicable")
                            .WithMessage("Fabric on hand is for a fit. Leave it out of this call.")
                    )
            );
        RuleForEach(order => order.Candidates).Custom(NamesAFabric);
    }

    private static void NamesAFabric(Candidate? candidate, ValidationContext<Order> context)
    {
        if (candidate?.Fabric is { } id && (context.InstanceToValidate.Fabrics ?? []).All(fabric => fabric?.Id != id))
        {
            string path = $"{context.PropertyPath}.{nameof(candidate.Fabric)}";
            context.AddFailure(new ValidationFailure(path, FabricUse.Unknown(id)) { ErrorCode = "unknown-fabric" });
        }
    }
}
