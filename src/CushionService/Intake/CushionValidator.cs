using CushionService.Contract.Orders;
using CushionService.Engine.Patterns;
using CushionService.Engine.Specifications.Fillings;

namespace CushionService.Intake;

/// <summary>The rules of a cushion: what its construction offers, and what its sizes allow.</summary>
internal sealed class CushionValidator : RecordValidator<Cushion>
{
    public CushionValidator()
        : base(
            AttributeRules.Of<Cushion>(),
            Rules.Part(nameof(Cushion.Outline), (Cushion cushion) => cushion.Outline, new OutlineValidator()),
            Rules.Part(nameof(Cushion.Edging), (Cushion cushion) => cushion.Edging, new EdgingValidator()),
            AttributeRules.Part(nameof(Cushion.Ties), (Cushion cushion) => cushion.Ties),
            AttributeRules.Part(nameof(Cushion.Straps), (Cushion cushion) => cushion.Straps),
            AttributeRules.Part(nameof(Cushion.Tufts), (Cushion cushion) => cushion.Tufts),
            AttributeRules.Part(nameof(Cushion.Pocket), (Cushion cushion) => cushion.Pocket),
            AttributeRules.Part(nameof(Cushion.Closure), (Cushion cushion) => cushion.Closure),
            AttributeRules.Part(nameof(Cushion.Handle), (Cushion cushion) => cushion.Handle),
            AttributeRules.Part(nameof(Cushion.Ends), (Cushion cushion) => cushion.Ends),
            AttributeRules.Part(nameof(Cushion.Flange), (Cushion cushion) => cushion.Flange),
            AttributeRules.Part(nameof(Cushion.Channels), (Cushion cushion) => cushion.Channels),
            AttributeRules.Part(nameof(Cushion.InnerCover), (Cushion cushion) => cushion.InnerCover),
            AttributeRules.Part(nameof(Cushion.Fabrics), (Cushion cushion) => cushion.Fabrics),
            Rules.Part(nameof(Cushion.Fill), (Cushion cushion) => cushion.Fill, new FillValidator()),
            (cushion, findings) =>
            {
                CushionReading reading = findings.Reading.Cushion(cushion);
                if (reading.Offer is { } offer)
                {
                    KeepsToOffer(cushion, offer, findings);
                    ConstructionRules.Check(cushion, reading, findings);
                    ClosureRules.Check(cushion, reading, findings);
                    HandleRules.Check(cushion, reading, findings);
                    AdditionRules.Check(cushion, reading, findings);
                }
            }
        ) { }

    private static void KeepsToOffer(Cushion cushion, ConstructionOffer offer, Findings findings)
    {
        string construction = Json(offer.Kind);
        if (offer.Thickness && cushion.Thickness is null)
        {
            findings.Refuse(nameof(Cushion.Thickness), "required", $"Thickness is required for construction {construction}.");
        }

        if (!offer.Thickness && cushion.Thickness is not null)
        {
            findings.Refuse(nameof(Cushion.Thickness), "not-applicable", $"Construction {construction} has no thickness.");
        }

        if (cushion.Boxing is not null && offer.Joins.IsEmpty)
        {
            findings.Refuse(nameof(Cushion.Boxing), "not-applicable", $"Construction {construction} has no boxing.");
        }

        if (cushion.Outline?.Kind is { } outline && !offer.Outlines.Contains(outline))
        {
            findings.Refuse("Outline.Kind", "not-combinable", $"Construction {construction} does not take the outline {Json(outline)}.");
        }

        if (cushion.Fill is { Kind: FillKind.Foam } && !offer.HasBlock)
        {
            findings.Refuse(
                "Fill.Kind",
                "not-combinable",
                $"Construction {construction} has no thickness to cut foam to; take a loose fill."
            );
        }
    }

    /// <summary>A choice as JSON writes it.</summary>
    internal static string Json<TEnum>(TEnum choice)
        where TEnum : struct, Enum => Words<TEnum>.Of(choice);
}
