using System.Collections.Immutable;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Checks the fields that belong to some constructions alone, and what a cushion's sizes allow of them.</summary>
internal static class ShapeIntake
{
    private static readonly LengthField<Ends> Tail = RecordForm<Ends>.Length(nameof(Ends.Tail)),
        EndTurning = RecordForm<Ends>.Length(nameof(Ends.Turning));

    private static readonly LengthField<OxfordFlange> FlangeWidth = RecordForm<OxfordFlange>.Length(nameof(OxfordFlange.Width)),
        FlangeTurning = RecordForm<OxfordFlange>.Length(nameof(OxfordFlange.Turning));

    private static readonly LengthField<Channels> Crown = RecordForm<Channels>.Length(nameof(Channels.Crown));

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
        ChannelSpecification? channels = ReadChannels(cushion.Channels, body);
        Tapers(taper, body);
        if (cushion.InnerCover is { } inner)
        {
            RecordForm<InnerCover>.Read(inner, body.At.Within(nameof(cushion.InnerCover)));
            if (cushion.Fill?.Kind != FillKind.Loose)
            {
                body.At.Refuse(nameof(cushion.InnerCover), "not-combinable", "An inner cover needs a loose fill.");
            }
        }

        return new ShapeSpecification
        {
            Length = length ?? Length.Zero,
            FrontThickness = body.FrontThickness ?? Length.Zero,
            Front = cushion.Front ?? FrontShape.Square,
            Ends = ReadEnds(cushion.Ends, body),
            Flange = ReadFlange(cushion.Flange, body),
            Gores = cushion.Gores ?? 0,
            Channels = channels,
            CornerTaper = taper ?? Length.Zero,
        };
    }

    private static void FieldsApply(Cushion cushion, ConstructionOffer offer, Findings findings)
    {
        foreach ((ConstructionField field, string name, Func<Cushion, object?> get) in Fields)
        {
            bool given = get(cushion) is not null;
            if (given && !offer.Takes(field))
            {
                findings.NotApplicable(name, $"construction {Words<Construction>.Of(offer.Kind)}");
            }
            else if (!given && offer.Requires(field))
            {
                string construction = Words<Construction>.Of(offer.Kind);
                findings.Refuse(name, "required", $"{FieldNames.Words(name)} is required for construction {construction}.");
            }
        }
    }

    private static BolsterEnds? ReadEnds(Ends? ends, CushionBody body)
    {
        BolsterEndKind kind = ends?.Kind ?? BolsterEndKind.Flat;
        ShapePractice usual = body.Practice.Shapes;
        Length? tail = usual.Tail,
            turning = usual.EndTurning;
        if (ends is not null)
        {
            Findings at = body.At.Within(nameof(Cushion.Ends));
            Fields<Ends> fields = RecordForm<Ends>.Read(ends, at);
            Only(kind == BolsterEndKind.Tied, ends.Tail is not null, nameof(ends.Tail), "ends that are not tied", at);
            Only(kind != BolsterEndKind.Flat, ends.Turning is not null, nameof(ends.Turning), "flat ends", at);
            (tail, turning) = (fields.Or(Tail, usual.Tail), fields.Or(EndTurning, usual.EndTurning));
        }

        return body.Offer.Kind == Construction.Bolster && tail is { } free && turning is { } turned
            ? new BolsterEnds(kind, kind == BolsterEndKind.Tied ? free : Length.Zero, kind == BolsterEndKind.Flat ? Length.Zero : turned)
            : null;
    }

    private static FlangeSpecification? ReadFlange(OxfordFlange? flange, CushionBody body)
    {
        if (flange is null)
        {
            return null;
        }

        Findings at = body.At.Within(nameof(Cushion.Flange));
        Fields<OxfordFlange> fields = RecordForm<OxfordFlange>.Read(flange, at);
        FlangeLayers layers = flange.Layers ?? FlangeLayers.Single;
        Only(layers == FlangeLayers.Double, flange.Turning is not null, nameof(flange.Turning), "a single flange", at);
        return fields[FlangeWidth] is { } width && fields.Or(FlangeTurning, body.Practice.Shapes.FlangeTurning) is { } turning
            ? new FlangeSpecification(layers, width, layers == FlangeLayers.Double ? turning : Length.Zero)
            : null;
    }

    private static ChannelSpecification? ReadChannels(Channels? channels, CushionBody body)
    {
        if (channels is null)
        {
            return null;
        }

        Findings at = body.At.Within(nameof(Cushion.Channels));
        Fields<Channels> fields = RecordForm<Channels>.Read(channels, at);
        Only(channels.Crown is null, channels.TakeUp is not null, nameof(channels.TakeUp), "channels with a crown", at);
        NeedsRectangle(nameof(Cushion.Channels), body);
        if (!fields.IsSound || channels.Count is not { } count || fields.Or(Crown, Length.Zero) is not { } crown)
        {
            return null;
        }

        if (body.Outline is { } outline && Length.FromNanometres(outline.Width.Nanometres / count / 2) is var deepest && crown > deepest)
        {
            string detail = $"A crown may be at most half as high as its channel is wide, {at.Text(deepest)}.";
            at.RefuseRange(nameof(channels.Crown), "out-of-range", detail, null, deepest);
        }

        return new ChannelSpecification(count, crown, Shares.Of(channels.TakeUp) ?? body.Practice.Shapes.ChannelTakeUp);
    }

    private static void Tapers(Length? taper, CushionBody body)
    {
        if (body.Written.CornerTaper is not null)
        {
            NeedsRectangle(nameof(Cushion.CornerTaper), body);
        }

        if (
            body.Outline is { } outline
            && Length.FromNanometres(Length.Min(outline.Width, outline.Depth).Nanometres / 4) is var quarter
            && taper >= quarter
        )
        {
            string detail = $"A corner may be drawn in by less than a quarter of its shorter side, {body.At.Text(quarter)}.";
            body.At.RefuseRange(nameof(Cushion.CornerTaper), "out-of-range", detail, null, quarter);
        }
    }

    private static void ThicknessAllows(Cushion cushion, CushionBody body)
    {
        if (body is not { Thickness: { } thickness, Outline: { } outline })
        {
            return;
        }

        if (body.FrontThickness is { } front && front >= thickness)
        {
            string detail = $"The front of a wedge must be thinner than its back, {body.At.Text(thickness)}.";
            body.At.RefuseRange(nameof(cushion.FrontThickness), "out-of-range", detail, Length.Zero, thickness);
        }

        Length? limit = body.Offer.Kind switch
        {
            Construction.GatheredCorner => Length.Min(outline.Width, outline.Depth),
            Construction.Waterfall when cushion.Front == FrontShape.BullNose => 2 * outline.Depth,
            _ => null,
        };
        if (limit is { } below && thickness >= below)
        {
            string detail = $"Thickness must be less than {body.At.Text(below)} on this outline.";
            body.At.RefuseRange(nameof(cushion.Thickness), "out-of-range", detail, null, below);
        }
    }

    private static void NeedsRectangle(string field, CushionBody body)
    {
        if (body.Outline is { Kind: not OutlineKind.Rectangle and var kind })
        {
            string word = FieldNames.Words(field);
            body.At.Refuse(field, "not-combinable", $"{word} needs outline rectangle, not {Words<OutlineKind>.Of(kind)}.");
        }
    }

    private static void Only(bool applies, bool given, string field, string otherwise, Findings findings)
    {
        if (given && !applies)
        {
            findings.NotApplicable(field, otherwise);
        }
    }
}
