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
        validator.RuleFor(cushion => cushion.Ties!).SetValidator(new TiesValidator()).When(cushion => cushion.Ties is not null);
        validator.RuleFor(cushion => cushion.Straps!).SetValidator(new StrapsValidator()).When(cushion => cushion.Straps is not null);
        validator.RuleFor(cushion => cushion.Tufts!).SetValidator(new TuftsValidator()).When(cushion => cushion.Tufts is not null);
        validator.RuleFor(cushion => cushion.Pocket!).SetValidator(new PocketValidator()).When(cushion => cushion.Pocket is not null);
    }

    private sealed class TiesValidator : AbstractValidator<Ties>
    {
        public TiesValidator() => this.AddAttributeRules();
    }

    private sealed class StrapsValidator : AbstractValidator<Straps>
    {
        public StrapsValidator() => this.AddAttributeRules();
    }

    private sealed class TuftsValidator : AbstractValidator<Tufts>
    {
        public TuftsValidator() => this.AddAttributeRules();
    }

    private sealed class PocketValidator : AbstractValidator<Pocket>
    {
        public PocketValidator() => this.AddAttributeRules();
    }
}
