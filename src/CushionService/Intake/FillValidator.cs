using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Intake;

/// <summary>The rules of what fills a cushion.</summary>
internal sealed class FillValidator : RecordValidator<Fill>
{
    private static readonly Length UsualOversize = Length.FromInches(0.5m);

    public FillValidator()
        : base(
            AttributeRules.Of<Fill>(),
            Rules.Part(nameof(Fill.Wrap), (Fill fill) => fill.Wrap, new AttributeValidator<Wrap>()),
            (fill, findings) =>
            {
                KeepsToKind(fill, findings);
                ComesFromStock(fill, findings);
                if (findings.Reading.Length(fill.Oversize) is not { } oversize)
                {
                    return;
                }

                // Foam is cut up to 1/2 in over the cover for a tight fit; under a wrap to the cover's size (common practice, no source).
                if (oversize > UsualOversize)
                {
                    findings.Warn(
                        nameof(Fill.Oversize),
                        "foam-too-large",
                        "Foam more than 1/2 in larger than its cover is hard to put in and strains the seams."
                    );
                }
                else if (fill.Wrap is not null && oversize > Length.Zero)
                {
                    findings.Warn(
                        nameof(Fill.Oversize),
                        "foam-too-large",
                        "Under a wrap foam is cut to the cover's size: the wrap fills the cover out."
                    );
                }
            }
        ) { }

    private static void KeepsToKind(Fill fill, Findings findings)
    {
        OnlyFor(FillKind.Foam, fill.Oversize is not null, nameof(Fill.Oversize));
        OnlyFor(FillKind.Foam, fill.Wrap is not null, nameof(Fill.Wrap));
        OnlyFor(FillKind.Loose, fill.Material is not null, nameof(Fill.Material));
        OnlyFor(FillKind.Loose, fill.Plumpness is not null, nameof(Fill.Plumpness));
        if (fill.Kind == FillKind.None)
        {
            OnlyFor(FillKind.Foam, fill.Density is not null, nameof(Fill.Density));
            OnlyFor(FillKind.Foam, fill.Stock is not null, nameof(Fill.Stock));
        }

        void OnlyFor(FillKind kind, bool given, string field)
        {
            if (given && fill.Kind is { } actual && actual != kind)
            {
                findings.Refuse(
                    field,
                    "not-applicable",
                    $"{FieldNames.Words(field)} does not apply to fill {CushionValidator.Json(actual)}."
                );
            }
        }
    }

    private static void ComesFromStock(Fill fill, Findings findings)
    {
        OrderReading order = findings.Reading;
        if (fill.Kind is FillKind.Foam or FillKind.Loose)
        {
            MaterialKind kind = fill.Kind == FillKind.Foam ? MaterialKind.Foam : MaterialKind.LooseFill;
            StockRules.Names(fill.Stock, kind, nameof(Fill.Stock), findings);
            if (fill.Density is not null && order.Stock(fill.Stock) is { Density: not null } stock)
            {
                findings.Refuse(nameof(Fill.Density), "not-combinable", $"The density stands with the stock {stock.Id}.");
            }
        }

        StockRules.Names(fill.Wrap?.Stock, MaterialKind.Batting, "Wrap.Stock", findings);
    }
}
