using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Intake;

/// <summary>The rules of a fabric.</summary>
internal sealed class FabricValidator : RecordValidator<Fabric>
{
    private static readonly Length NarrowestUsable = Length.FromInches(1);

    public FabricValidator()
        : base(
            AttributeRules.Of<Fabric>(),
            Rules.Part(nameof(Fabric.Repeat), (Fabric fabric) => fabric.Repeat, new RepeatValidator()),
            AttributeRules.Part(nameof(Fabric.Shrinkage), (Fabric fabric) => fabric.Shrinkage),
            Rules.Part(nameof(Fabric.Sold), (Fabric fabric) => fabric.Sold, new SaleValidator()),
            Rules.Part(nameof(Fabric.Price), (Fabric fabric) => fabric.Price, new PriceValidator()),
            Rules.Entries(nameof(Fabric.OnHand), (Fabric fabric) => fabric.OnHand, new AttributeValidator<Offcut>()),
            (fabric, findings) =>
            {
                OrderReading order = findings.Reading;
                if (
                    order.Length(fabric.Width) is { } width
                    && order.Length(fabric.Selvedge) is { } selvedge
                    && width - 2 * selvedge < NarrowestUsable
                )
                {
                    findings.RefuseRange(
                        nameof(Fabric.Selvedge),
                        "out-of-range",
                        "The selvedges leave less than 1 in of the width.",
                        null,
                        Length.FromNanometres((width - NarrowestUsable).Nanometres / 2)
                    );
                }

                if (fabric is { OneWay: true, Rotation: not null and not Rotations.None })
                {
                    findings.Refuse(nameof(Fabric.Rotation), "not-combinable", "Pieces of a one-way fabric may not be turned.");
                }

                PriceRules.Sold(fabric, findings);
            }
        ) { }

    private sealed class RepeatValidator : RecordValidator<Repeat>
    {
        public RepeatValidator()
            : base(
                AttributeRules.Of<Repeat>(),
                (repeat, findings) =>
                {
                    if (repeat is { Drop: DropKind.Half, Width: null })
                    {
                        findings.Refuse(nameof(Repeat.Width), "required", "Width is required for a half drop.");
                    }
                }
            ) { }
    }
}
