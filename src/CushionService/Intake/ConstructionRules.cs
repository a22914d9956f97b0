using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Intake;

/// <summary>Whether the fields that belong to some constructions alone go with this one, and what its sizes allow.</summary>
internal static class ConstructionRules
{
    private static readonly ImmutableArray<(ConstructionField Field, string Name, Func<Cushion, object?> Get)> Fields =
    [
        .. Enum.GetValues<ConstructionField>()
            .Select(field => (field, field.ToString(), Getters.Of<Cushion, object?>(typeof(Cushion).GetProperty(field.ToString())!))),
    ];

    public static void Check(Cushion cushion, CushionReading reading, Findings findings)
    {
        ConstructionOffer offer = reading.Offer!;
        foreach ((ConstructionField field, string name, Func<Cushion, object?> get) in Fields)
        {
            bool given = get(cushion) is not null;
            if (given && !offer.Takes(field))
            {
                findings.Refuse(
                    name,
                    "not-applicable",
                    $"{FieldNames.Words(name)} does not apply to construction {CushionValidator.Json(offer.Kind)}."
                );
            }
            else if (!given && offer.Requires(field))
            {
                findings.Refuse(
                    name,
                    "required",
                    $"{FieldNames.Words(name)} is required for construction {CushionValidator.Json(offer.Kind)}."
                );
            }
        }

        var own = new ConstructionReading(cushion, findings.Reading);
        PartsApply(cushion, own, findings);
        ThicknessAllows(cushion, reading, own, findings);
        TopAllows(cushion, reading, own, findings);
        if (cushion.InnerCover is not null && cushion.Fill?.Kind != FillKind.Loose)
        {
            findings.Refuse("InnerCover", "not-combinable", "An inner cover holds a loose fill.");
        }
    }

    private static void PartsApply(Cushion cushion, ConstructionReading own, Findings findings)
    {
        Only(own.EndKind == BolsterEndKind.Tied, cushion.Ends?.Tail is not null, "Ends.Tail", "tied ends");
        Only(own.EndKind != BolsterEndKind.Flat, cushion.Ends?.Turning is not null, "Ends.Turning", "gathered or tied ends");
        Only(own.FlangeLayers == FlangeLayers.Double, cushion.Flange?.Turning is not null, "Flange.Turning", "a double flange");
        Only(cushion.Channels?.Crown is null, cushion.Channels?.TakeUp is not null, "Channels.TakeUp", "channels that are stitched flat");

        void Only(bool applies, bool given, string field, string to)
        {
            if (given && !applies)
            {
                findings.Refuse(field, "not-applicable", $"{FieldNames.Words(field.Split('.')[1])} applies to {to} alone.");
            }
        }
    }

    private static void ThicknessAllows(Cushion cushion, CushionReading reading, ConstructionReading own, Findings findings)
    {
        if (reading is not { Thickness: { } thickness, Outline: { } outline })
        {
            return;
        }

        OrderReading order = findings.Reading;
        if (order.Length(cushion.FrontThickness) is { } front && front >= thickness)
        {
            findings.RefuseRange(
                "FrontThickness",
                "out-of-range",
                $"A wedge is thinner at the front than at the back, {order.Text(thickness)}.",
                Length.Zero,
                thickness
            );
        }

        Length? limit = cushion.Construction switch
        {
            Construction.GatheredCorner => Length.Min(outline.Width, outline.Depth),
            Construction.Waterfall when own.Front == FrontShape.BullNose => 2 * outline.Depth,
            _ => null,
        };
        if (limit is { } below && thickness >= below)
        {
            findings.RefuseRange(
                "Thickness",
                "out-of-range",
                $"Thickness must be less than {order.Text(below)} on this outline.",
                null,
                below
            );
        }
    }

    private static void TopAllows(Cushion cushion, CushionReading reading, ConstructionReading own, Findings findings)
    {
        if (reading.Outline is not { } outline)
        {
            return;
        }

        OrderReading order = findings.Reading;
        Rectangular(cushion.Channels is not null, "Channels");
        Rectangular(cushion.CornerTaper is not null, "CornerTaper");
        if (own.Channels is { Count: > 0 } channels)
        {
            var deepest = Length.FromNanometres(outline.Width.Nanometres / channels.Count / 2);
            if (channels.Crown > deepest)
            {
                findings.RefuseRange(
                    "Channels.Crown",
                    "out-of-range",
                    $"A crown may be at most half as high as its channel is wide, {order.Text(deepest)}.",
                    null,
                    deepest
                );
            }
        }

        var quarter = Length.FromNanometres(Length.Min(outline.Width, outline.Depth).Nanometres / 4);
        if (order.Length(cushion.CornerTaper) is { } taper && taper >= quarter)
        {
            findings.RefuseRange(
                "CornerTaper",
                "out-of-range",
                $"A corner may be drawn in by less than a quarter of its shorter side, {order.Text(quarter)}.",
                null,
                quarter
            );
        }

        void Rectangular(bool given, string field)
        {
            if (given && outline.Kind != OutlineKind.Rectangle)
            {
                findings.Refuse(
                    field,
                    "not-combinable",
                    $"{FieldNames.Words(field)} needs a rectangle, not outline {CushionValidator.Json(outline.Kind)}."
                );
            }
        }
    }
}
