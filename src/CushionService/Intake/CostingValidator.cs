using CushionService.Contract.Orders;
using CushionService.Engine.Specifications.Pricing;
using FluentValidation;

namespace CushionService.Intake;

/// <summary>The rules of a costing beyond the form of its fields.</summary>
/// <remarks>A markup is a share of the cost, a margin a share of the price: 25 % of markup is 20 % of margin, so that only one of them
/// can be meant.</remarks>
internal sealed class CostingValidator : AbstractValidator<Costing>
{
    /// <summary>The rules.</summary>
    public CostingValidator()
    {
        RuleFor(costing => costing.Margin)
            .Null()
            .When(costing => costing.Markup is not null)
            .WithErrorCode("not-combinable")
            .WithDetail(PriceTexts.MarkupOrMargin);
        RuleFor(costing => costing.Labour!).SetValidator(new LabourValidator()).When(costing => costing.Labour is not null);
    }

    // The times of operations.
    private sealed class LabourValidator : AbstractValidator<Labour>
    {
        /// <summary>Each operation is one that the workroom has times for, and has one time.</summary>
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
