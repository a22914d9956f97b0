using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Trimmings;
using Outline = CushionService.Engine.Specifications.Outlines.Outline;

namespace CushionService.Intake;

/// <summary>Checks a cushion and specifies it: what its construction offers, and what its sizes allow.</summary>
internal static class CushionIntake
{
    private static readonly LengthField<Cushion> Thickness = RecordForm<Cushion>.Length(nameof(Cushion.Thickness)),
        CushionLength = RecordForm<Cushion>.Length(nameof(Cushion.Length)),
        FrontThickness = RecordForm<Cushion>.Length(nameof(Cushion.FrontThickness)),
        CornerTaper = RecordForm<Cushion>.Length(nameof(Cushion.CornerTaper)),
        SeamAllowance = RecordForm<Cushion>.Length(nameof(Cushion.SeamAllowance));

    /// <summary>The cushion; null where anything that it cannot do without was refused.</summary>
    public static CushionSpecification? Read(Cushion cushion, int index, OrderContext order, Findings findings)
    {
        Fields<Cushion> fields = RecordForm<Cushion>.Read(cushion, findings);
        Outline? outline = OutlineIntake.Read(cushion.Outline, findings.Within(nameof(cushion.Outline)));
        if (cushion.Boxing is { } boxing)
        {
            RecordForm<Boxing>.Read(boxing, findings.Within(nameof(cushion.Boxing)));
        }

        if (cushion.Match is { } match)
        {
            RecordForm<Matching>.Read(match, findings.Within(nameof(cushion.Match)));
        }

        if (cushion.Fabrics is { } named)
        {
            RecordForm<CushionFabrics>.Read(named, findings.Within(nameof(cushion.Fabrics)));
        }

        FillSpecification? fill = FillIntake.Read(cushion.Fill, order, findings.Within(nameof(cushion.Fill)));
        if (cushion.Construction is not { } kind || !Enum.IsDefined(kind))
        {
            return null;
        }

        ConstructionOffer offer = ConstructionRegistry.Of(kind).Offer;
        Length? seam = fields.Or(SeamAllowance, order.Practice.SeamAllowance);
        CushionBody body = new(cushion, offer, outline, fields[Thickness], seam, order.Practice, findings)
        {
            FrontThickness = fields[FrontThickness],
        };
        KeepsToOffer(cushion, offer, findings);
        ShapeSpecification shape = ShapeIntake.Read(cushion, body, fields[CushionLength], fields[CornerTaper]);
        ClosureSpecification? closure = ClosureIntake.Read(cushion.Closure, body, findings.Within(nameof(cushion.Closure)));
        HandleSpecification? handle = HandleIntake.Read(cushion.Handle, body, findings.Within(nameof(cushion.Handle)));
        TrimSpecification trim = TrimIntake.Read(cushion, body, findings);
        CoatedCover.Check(cushion, fill, offer, order, findings);
        string? top = cushion.Fabrics?.Top ?? order.OnlyFabric;
        return outline is null || closure is null || seam is not { } allowance || top is null || cushion.Id is not { } id
            ? null
            : shape.On(
                new CushionSpecification
                {
                    Id = id,
                    Label = cushion.Label,
                    Pointer = $"/cushions/{index}",
                    Quantity = cushion.Quantity ?? 1,
                    Construction = kind,
                    Outline = outline,
                    Thickness = body.Thickness ?? Length.Zero,
                    BoxingTautness = offer.Thickness ? order.Practice.BoxingTautness : Length.Zero,
                    SeamAllowance = allowance,
                    Practice = order.Practice,
                    Joins = body.Joins,
                    Closure = closure,
                    EdgeFinish = cushion.EdgeFinish ?? Usual(cushion, closure, order),
                    Handle = handle,
                    Trim = trim,
                    Fill = fill,
                    Fabrics = Roles(cushion, top),
                    Grain = cushion.Grain,
                    Match = Match(cushion.Match, findings),
                }
            );
    }

    // A cover that comes off is washed, and frays unless its edges are sewn over; coated fabric does not fray.
    private static RawEdgeFinish Usual(Cushion cushion, ClosureSpecification closure, OrderContext order) =>
        closure is HandSewnClosure || CoatedCover.IsCoated(cushion, order) ? RawEdgeFinish.None : RawEdgeFinish.Overedge;

    // The boxing carries on what the faces show.
    private static MatchSpecification Match(Matching? match, Findings findings)
    {
        MatchSpecification usual = MatchSpecification.Usual;
        FaceMatch faces = match?.Faces ?? usual.Faces;
        if (faces == FaceMatch.Free && match?.Boxing is { } carried and not BoxingMatch.Free)
        {
            findings.Refuse($"{nameof(Cushion.Match)}.{nameof(match.Boxing)}", "not-combinable", ShapeTexts.BoxingMatch(carried));
        }

        return new MatchSpecification(
            faces,
            match?.Underside ?? usual.Underside,
            match?.Boxing ?? (faces == FaceMatch.Free ? BoxingMatch.Free : usual.Boxing)
        );
    }

    private static FabricRoles Roles(Cushion cushion, string top)
    {
        string sides = cushion.Fabrics?.Sides ?? top;
        string bottom = cushion.Fabrics?.Bottom ?? top;
        return new FabricRoles(top, bottom, sides, cushion.Handle?.Fabric ?? sides)
        {
            Edging = cushion.Edging?.Fabric ?? top,
            Ties = cushion.Ties?.Fabric ?? top,
            Straps = cushion.Straps?.Fabric ?? bottom,
            Pocket = cushion.Pocket?.Fabric ?? sides,
            InnerCover = cushion.InnerCover?.Fabric,
        };
    }

    private static void KeepsToOffer(Cushion cushion, ConstructionOffer offer, Findings findings)
    {
        if (offer.Thickness && cushion.Thickness is null)
        {
            findings.Refuse(nameof(cushion.Thickness), "required", FieldTexts.RequiredForConstruction("Thickness", offer.Kind));
        }

        if (!offer.Thickness && cushion.Thickness is not null)
        {
            findings.NotApplicable(nameof(cushion.Thickness), FieldTexts.NotForConstruction("Thickness", offer.Kind));
        }

        if (cushion.Boxing is not null && offer.Joins.IsEmpty)
        {
            findings.NotApplicable(nameof(cushion.Boxing), FieldTexts.NotForConstruction("Boxing", offer.Kind));
        }

        if (cushion.Outline?.Kind is { } outline && !offer.Outlines.Contains(outline))
        {
            findings.Refuse("Outline.Kind", "not-combinable", ShapeTexts.OutlineNotOffered(offer.Kind, outline, offer.Outlines));
        }

        if (cushion.Fill is { Kind: FillKind.Foam } && !offer.HasBlock)
        {
            findings.Refuse("Fill.Kind", "not-combinable", ShapeTexts.NoFoam(offer.Kind));
        }
    }
}
