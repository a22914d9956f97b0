using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Nesting;
using CushionService.Specifying;
using FluentValidation;

namespace CushionService.Validation;

/// <summary>The rules of a cloth.</summary>
internal sealed class FabricValidator : AbstractValidator<Fabric>
{
    private static readonly Length NarrowestUsable = Length.FromInches(1);

    public FabricValidator()
    {
        this.AddAttributeRules();
        RuleFor(fabric => fabric.Repeat!).SetValidator(new RepeatValidator()).When(fabric => fabric.Repeat is not null);
        RuleFor(fabric => fabric.Shrinkage!).SetValidator(new ShrinkageValidator()).When(fabric => fabric.Shrinkage is not null);
        RuleFor(fabric => fabric.Sold!).SetValidator(new SaleValidator()).When(fabric => fabric.Sold is not null);
        RuleFor(fabric => fabric.Price!).SetValidator(new PriceValidator()).When(fabric => fabric.Price is not null);
        RuleForEach(fabric => fabric.OnHand).SetValidator(new OffcutValidator());
        RuleFor(fabric => fabric).Custom((fabric, context) =>
        {
            OrderReading order = context.Reading();
            if (order.Length(fabric.Width) is { } width && order.Length(fabric.Selvedge) is { } selvedge && width - 2 * selvedge < NarrowestUsable)
            {
                context.RefuseRange(nameof(Fabric.Selvedge), "out-of-range", "The selvedges leave less than 1 in of the width.", null, Length.FromNanometres((width - NarrowestUsable).Nanometres / 2));
            }

            if (fabric is { OneWay: true, Rotation: not null and not Rotations.None })
            {
                context.Refuse(nameof(Fabric.Rotation), "not-combinable", "Pieces of a one-way cloth may not be turned.");
            }

            PriceRules.Sold(fabric, context);
        });
    }

    private sealed class RepeatValidator : AbstractValidator<Repeat>
    {
        public RepeatValidator()
        {
            this.AddAttributeRules();
            RuleFor(repeat => repeat).Custom((repeat, context) =>
            {
                if (repeat is { Drop: DropKind.Half, Width: null })
                {
                    context.Refuse(nameof(Repeat.Width), "required", "Width is required for a half drop.");
                }
            });
        }
    }

    private sealed class ShrinkageValidator : AbstractValidator<Shrinkage>
    {
        public ShrinkageValidator() => this.AddAttributeRules();
    }

    private sealed class OffcutValidator : AbstractValidator<Offcut>
    {
        public OffcutValidator() => this.AddAttributeRules();
    }
}
