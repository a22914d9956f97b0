using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;
using Outline = CushionService.Engine.Specifications.Outlines.Outline;

namespace CushionService.Intake;

/// <summary>Checks a cushion and specifies it: what its construction offers, and what its sizes allow.</summary>
/// <remarks>The order of reading matters: the outline, the fill and the sizes first, then the closure, which they bound, then the handle
/// and what is added, which must keep clear of the closure. What was refused is left out of the checks after it, so that one error is one
/// finding.</remarks>
internal static class CushionIntake
{
    private static readonly LengthField<Cushion> Thickness = RecordForm<Cushion>.Length(nameof(Cushion.Thickness)),
        CushionLength = RecordForm<Cushion>.Length(nameof(Cushion.Length)),
        FrontThickness = RecordForm<Cushion>.Length(nameof(Cushion.FrontThickness)),
        CornerTaper = RecordForm<Cushion>.Length(nameof(Cushion.CornerTaper)),
        SeamAllowance = RecordForm<Cushion>.Length(nameof(Cushion.SeamAllowance));

    /// <summary>The cushion; null where anything that it cannot do without was refused.</summary>
    /// <param name="ordered">The cushion as written, and its place.</param>
    /// <param name="order">The order, with its fabrics, its stocks and its workroom's practice.</param>
    public static CushionSpecification? Read(OrderedCushion ordered, OrderContext order)
    {
        (Cushion cushion, Findings findings) = (ordered.Written, ordered.At);
        Fields<Cushion> fields = RecordForm<Cushion>.Read(cushion, findings);
        Outline? outline = ordered.Drawn ?? OutlineIntake.Read(cushion.Outline, findings.Within(nameof(cushion.Outline)));
        MatchSpecification match = Forms(cushion, findings);
        FillSpecification? fill = FillIntake.Read(cushion.Fill, order, findings.Within(nameof(cushion.Fill)));
        if (cushion.Construction is not { } kind || !Enum.IsDefined(kind))
        {
            return null;
        }

        // What follows depends on the construction: without one there is nothing to check it by.
        ConstructionOffer offer = ConstructionRegistry.Of(kind).Offer;
        Length? seam = fields.Or(SeamAllowance, order.Practice.SeamAllowance);
        // From here on everything is checked against the body, and what it could not read is not checked again.
        CushionBody body = new(cushion, offer, outline, fields[Thickness], seam, order.Practice, findings)
        {
            FrontThickness = fields[FrontThickness],
        };
        KeepsToOffer(cushion, offer, outline?.Kind ?? cushion.Outline?.Kind, findings);
        ShapeSpecification shape = ShapeIntake.Read(cushion, body, fields[CushionLength], fields[CornerTaper]);
        ClosureSpecification? closure = ClosureIntake.Read(cushion.Closure, body, findings.Within(nameof(cushion.Closure)));
        HandleSpecification? handle = HandleIntake.Read(cushion.Handle, body, findings.Within(nameof(cushion.Handle)));
        TrimSpecification trim = TrimIntake.Read(cushion, body, findings);
        CoatedCover.Check(cushion, fill, offer, order, findings);
        if (
            outline is null
            || closure is null
            || seam is not { } allowance
            || Top(cushion, order) is not { } top
            || cushion.Id is not { } id
        )
        {
            return null;
        }

        CushionSpecification specified = shape.On(
            new CushionSpecification
            {
                Id = id,
                Label = cushion.Label,
                Group = cushion.Group,
                Pointer = ordered.Pointer,
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
                Match = match,
            }
        );
        CheckWhole(specified, findings);
        return specified;
    }

    // Everything but the top has a usual fabric or none.
    private static string? Top(Cushion cushion, OrderContext order) => cushion.Fabrics?.Top ?? order.OnlyFabric;

    // What is seen only where the whole cushion is known.
    private static void CheckWhole(CushionSpecification specified, Findings findings)
    {
        (Length allowance, WorkroomPractice practice) = (specified.SeamAllowance, specified.Practice);
        FillCheck.Weight(specified, findings);
        // Overedging takes nothing off, so it must lie within the allowance (common practice, no source).
        Length bight = practice.Stitch?.Bight is { } own && own > Length.Zero ? own : practice.Stitches.Bight;
        if (specified.EdgeFinish == RawEdgeFinish.Overedge && allowance < bight)
        {
            findings.Warn(nameof(Cushion.SeamAllowance), "overedge-too-wide", TrimTexts.OveredgeInSeam(allowance, bight));
        }

        // The allowances of both edges lie side by side within the boxing, so that it stays supple (common practice, no source).
        if (Boxing(specified) is { Nanometres: > 0 } boxing && boxing < 2 * allowance)
        {
            var half = Length.FromNanometres(boxing.Nanometres / 2);
            findings.Warn(nameof(Cushion.SeamAllowance), "seam-too-deep", TrimTexts.SeamInBoxing(allowance, boxing, half));
        }

        FoamLayerIntake.FitsCushion(specified, findings);
    }

    // Height of the lowest strip between two faces; zero where there is none.
    private static Length Boxing(CushionSpecification cushion) =>
        cushion.Construction switch
        {
            Construction.Wedge when cushion.FrontThickness > Length.Zero => cushion.FrontThickness,
            Construction.Boxed or Construction.Wedge or Construction.Waterfall or Construction.Pouf => cushion.BoxingHeight,
            _ => Length.Zero,
        };

    // The boxing and the fabrics have no more than their form; names of fabrics are checked with the order.
    private static MatchSpecification Forms(Cushion cushion, Findings findings)
    {
        if (cushion.Boxing is { } boxing)
        {
            RecordForm<Boxing>.Read(boxing, findings.Within(nameof(cushion.Boxing)));
        }

        MatchSpecification match = MatchIntake.Read(cushion.Match, findings.Within(nameof(cushion.Match)));
        if (cushion.Fabrics is { } named)
        {
            RecordForm<CushionFabrics>.Read(named, findings.Within(nameof(cushion.Fabrics)));
        }

        return match;
    }

    // A cover that comes off is washed, and frays unless its edges are sewn over; coated fabric does not fray.
    private static RawEdgeFinish Usual(Cushion cushion, ClosureSpecification closure, OrderContext order) =>
        closure is HandSewnClosure || CoatedCover.IsCoated(cushion, order) ? RawEdgeFinish.None : RawEdgeFinish.Overedge;

    // What each part is made of where the order leaves it out: straps as the underside that they lie on, a pocket and a handle as the
    // boxing, anything else as the top.
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

    // Whether the construction has a thickness and a boxing, and takes the outline and the fill.
    private static void KeepsToOffer(Cushion cushion, ConstructionOffer offer, OutlineKind? drawn, Findings findings)
    {
        // A thickness is the finished height of the boxing, or of the gathered corner; a knife edge has none.
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

        // An outline that is drawn well may still be one that the construction cannot be sewn on.
        // Corners with radii make a rectangle a rounded one.
        if (drawn is { } outline && !offer.Outlines.Contains(outline))
        {
            bool rounded = outline == OutlineKind.RoundedRectangle && cushion.Outline?.Kind == OutlineKind.Rectangle;
            string cause = rounded ? "Outline.Corners" : "Outline.Kind";
            findings.Refuse(cause, "not-combinable", ShapeTexts.OutlineNotOffered(offer.Kind, outline, offer.Outlines));
        }

        FillCheck.Kind(cushion, offer, findings);
    }
}
