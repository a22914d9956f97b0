using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;

namespace CushionService.Intake;

/// <summary>The rules of a workroom's settings.</summary>
internal sealed class WorkroomValidator : RecordValidator<Workroom>
{
    public WorkroomValidator()
        : base(
            AttributeRules.Of<Workroom>(),
            Rules.Part(nameof(Workroom.Stitch), (Workroom workroom) => workroom.Stitch, new StitchValidator())
        ) { }

    private sealed class StitchValidator : RecordValidator<Stitch>
    {
        public StitchValidator()
            : base(
                AttributeRules.Of<Stitch>(),
                (stitch, findings) =>
                {
                    if (stitch is { Type: { } type, Bight: not null } && Enum.IsDefined(type) && !StitchSpecification.HasBight(type))
                    {
                        findings.Refuse(nameof(Stitch.Bight), "not-applicable", $"A {CushionValidator.Json(type)} has no bight.");
                    }
                }
            ) { }
    }
}
