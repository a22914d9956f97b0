using CushionService.Contract.Orders;
using FluentValidation;

namespace CushionService.Validation;

/// <summary>The rules of additions by themselves.</summary>
internal static class AdditionValidators
{
    /// <summary>Adds them to a cushion's.</summary>
    public static void AddAdditionRules(this AbstractValidator<Cushion> validator)
    {
        validator.RuleFor(cushion => cushion.Edging!).SetValidator(new EdgingValidator()).When(cushion => cushion.Edging is not null);
        validator.AddParts(
            AttributeRules.Part(nameof(Cushion.Ties), (Cushion cushion) => cushion.Ties),
            AttributeRules.Part(nameof(Cushion.Straps), (Cushion cushion) => cushion.Straps),
            AttributeRules.Part(nameof(Cushion.Tufts), (Cushion cushion) => cushion.Tufts),
            AttributeRules.Part(nameof(Cushion.Pocket), (Cushion cushion) => cushion.Pocket));
    }
}
