using System.Collections.Immutable;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Checks the fields that belong to some constructions alone, and what a cushion's sizes allow of them.</summary>
/// <remarks>Sizes are finished sizes. A wedge is thinner at the front than at the back; a waterfall's top runs on over its front, which
/// is square or a half circle (bull nose).</remarks>
internal static class ShapeIntake
{
    // The fields that an offer may take, each with what gets it from a cushion.
    private static readonly ImmutableArray<(ConstructionField Field, string Name, Func<Cushion, object?> Get)> Fields =
    [
        .. Enum.GetValues<ConstructionField>()
            .Select(field => (field, field.ToString(), Getters.Of<Cushion, object?>(typeof(Cushion).GetProperty(field.ToString())!))),
    ];

    /// <summary>What the cushion has of these fields; what was refused is left out.</summary>
    /// <param name="cushion">The cushion as written.</param>
    /// <param name="body">What has been read of it.</param>
    /// <param name="length">Its length, where it has one that passed.</param>
    /// <param name="taper">Its corner taper, where it has one that passed.</param>
    public static ShapeSpecification Read(Cushion cushion, CushionBody body, Length? length, Length? taper)
    {
        FieldsApply(cushion, body.Offer, body.At);
        ThicknessAllows(cushion, body);
        // Whatever is wrong with one part, the others are read too.
        ChannelSpecification? channels = ChannelIntake.Read(cushion.Channels, body);
        Tapers(taper, body);
        // An inner cover holds a fill that is poured; foam has a shape of its own.
        if (cushion.InnerCover is { } inner)
        {
            RecordForm<InnerCover>.Read(inner, body.At.Within(nameof(cushion.InnerCover)));
            if (cushion.Fill?.Kind != FillKind.Loose)
            {
                body.At.Refuse(nameof(cushion.InnerCover), "not-combinable", ShapeTexts.LooseFill);
            }
        }

        return new ShapeSpecification
        {
            Length = length ?? Length.Zero,
            FrontThickness = body.FrontThickness ?? Length.Zero,
            Front = cushion.Front ?? FrontShape.Square,
            Ends = EndsIntake.Read(cushion.Ends, body),
            Flange = FlangeIntake.Read(cushion.Flange, body),
            Gores = cushion.Gores ?? 0,
            Channels = channels,
            CornerTaper = taper ?? Length.Zero,
        };
    }

    // Reports each field that the construction does not take, and each that it cannot do without.
    private static void FieldsApply(Cushion cushion, ConstructionOffer offer, Findings findings)
    {
        foreach ((ConstructionField field, string name, Func<Cushion, object?> get) in Fields)
        {
            bool given = get(cushion) is not null;
            if (given && !offer.Takes(field))
            {
                findings.NotApplicable(name, FieldTexts.NotForConstruction(FieldNames.Words(name), offer.Kind));
            }
            else if (!given && offer.Requires(field))
            {
                findings.Refuse(name, "required", FieldTexts.RequiredForConstruction(FieldNames.Words(name), offer.Kind));
            }
        }
    }

    // Two corners of a side are each drawn in, and half of it must stay straight.
    private static void Tapers(Length? taper, CushionBody body)
    {
        if (body.Written.CornerTaper is not null)
        {
            body.NeedsRectangle(nameof(Cushion.CornerTaper));
        }

        if (
            body.Outline is { } outline
            && Length.FromNanometres(Length.Min(outline.Width, outline.Depth).Nanometres / 4) is var quarter
            && taper >= quarter
        )
        {
            body.At.RefuseRange(nameof(Cushion.CornerTaper), "out-of-range", ShapeTexts.CornerTaper(quarter), null, quarter);
        }
    }

    // Whether front and thickness leave a shape.
    private static void ThicknessAllows(Cushion cushion, CushionBody body)
    {
        // A mitred or gathered corner takes up the thickness itself.
        if (
            body is { Thickness: not null, BoxingHeight: null }
            && body.Offer.Kind is Construction.Boxed or Construction.Wedge or Construction.Waterfall or Construction.Pouf
        )
        {
            Length taut = body.Practice.BoxingTautness;
            body.At.RefuseRange(nameof(cushion.Thickness), "out-of-range", ShapeTexts.TautBoxing(taut), taut, null);
        }

        if (body is not { Thickness: { } thickness, Outline: { } outline })
        {
            return;
        }

        if (body.FrontThickness is { } front && front >= thickness)
        {
            body.At.RefuseRange(
                nameof(cushion.FrontThickness),
                "out-of-range",
                ShapeTexts.FrontThickness(thickness),
                Length.Zero,
                thickness
            );
        }

        // A gathered corner takes up the thickness at both ends of a side; a bull nose runs round the front as a half circle.
        Length? limit = body.Offer.Kind switch
        {
            Construction.GatheredCorner => Length.Min(outline.Width, outline.Depth),
            Construction.Waterfall when cushion.Front == FrontShape.BullNose => 2 * outline.Depth,
            _ => null,
        };
        if (limit is { } below && thickness >= below)
        {
            body.At.RefuseRange(nameof(cushion.Thickness), "out-of-range", ShapeTexts.Thickness(below), null, below);
        }
    }
}
