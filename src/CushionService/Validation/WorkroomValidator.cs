using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;
using FluentValidation;

namespace CushionService.Validation;

/// <summary>The rules of a workroom's settings.</summary>
internal sealed class WorkroomValidator : AbstractValidator<Workroom>
{
    public WorkroomValidator()
    {
        this.AddRules(
            AttributeRules.Of<Workroom>(),
            Rules.Part(nameof(Workroom.Stitch), (Workroom workroom) => workroom.Stitch, new StitchValidator()));
    }

    private sealed class StitchValidator : AbstractValidator<Stitch>
    {
        public StitchValidator()
        {
            this.AddRules(
                AttributeRules.Of<Stitch>(),
                (stitch, context) =>
                {
                    if (stitch is { Type: { } type, Bight: not null } && Enum.IsDefined(type) && !StitchSpecification.HasBight(type))
                    {
                        context.Refuse(nameof(Stitch.Bight), "not-applicable", $"A {CushionValidator.Json(type)} has no bight.");
                    }
                });
        }
    }
}
