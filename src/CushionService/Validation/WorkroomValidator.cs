using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;
using FluentValidation;

namespace CushionService.Validation;

/// <summary>The rules of a workroom's settings.</summary>
internal sealed class WorkroomValidator : AbstractValidator<Workroom>
{
    public WorkroomValidator()
    {
        this.AddAttributeRules();
        RuleFor(workroom => workroom.Stitch!).SetValidator(new StitchValidator()).When(workroom => workroom.Stitch is not null);
    }

    private sealed class StitchValidator : AbstractValidator<Stitch>
    {
        public StitchValidator()
        {
            this.AddAttributeRules();
            RuleFor(stitch => stitch).Custom((stitch, context) =>
            {
                if (stitch is { Type: { } type, Bight: not null } && Enum.IsDefined(type) && !StitchSpecification.HasBight(type))
                {
                    context.Refuse(nameof(Stitch.Bight), "not-applicable", $"A {CushionValidator.Json(type)} has no bight.");
                }
            });
        }
    }
}
