using CushionService.Contract.Orders;
using CushionService.Engine.Specifications.Pricing;
using FluentValidation;

namespace CushionService.Intake;

/// <summary>The rules of a costing beyond the form of its fields.</summary>
internal sealed class CostingValidator : AbstractValidator<Costing>
{
    public CostingValidator()
    {
        RuleFor(costing => costing.Margin)
            .Null()
            .When(costing => costing.Markup is not null)
            .WithErrorCode("not-combinable")
            .WithDetail(PriceTexts.MarkupOrMargin);
        RuleFor(costing => costing.Labour!).SetValidator(new LabourValidator()).When(costing => costing.Labour is not null);
    }

    private sealed class LabourValidator : AbstractValidator<Labour>
    {
        public LabourValidator()
        {
            RuleForEach(labour => labour.Operations)
                .ChildRules(time =>
                    time.RuleFor(operation => operation.Operation)
                        .Must(word => Operation.All.Contains(new Operation(word!)))
                        .When(operation => operation.Operation is not null)
                        .WithErrorCode("unknown-value")
                        .WithDetail(PriceTexts.Operations(Operation.All.Select(operation => operation.Word)))
                );
            RuleFor(labour => labour.Operations).Distinct(time => time?.Operation, nameof(OperationTime.Operation));
        }
    }
}
