using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Constructions;

/// <summary>A box that is lower at the front than at the back, or a full triangle without a front at all.</summary>
/// <remarks>The top is as deep as the slope, √(D² + (Tr − Tf)²); each side is a trapezoid of depth D and heights Tf and Tr (general
/// geometry).</remarks>
internal sealed class Wedge : IConstruction
{
    public ConstructionOffer Offer { get; } =
        new()
        {
            Kind = Construction.Wedge,
            Description = ConstructionTexts.Wedge,
            Outlines = [OutlineKind.Rectangle],
            Closures =
            [
                new(ClosureKind.Zipper, [Side.Back, Side.Bottom]),
                new(ClosureKind.HookAndLoop, [Side.Back, Side.Bottom]),
                new(ClosureKind.Envelope, [Side.Bottom]),
                new(ClosureKind.HandSewn, [Side.Back]),
                new(ClosureKind.Buttons, [Side.Back, Side.Bottom]),
                new(ClosureKind.Ties, [Side.Back, Side.Bottom]),
            ],
            Thickness = true,
            Edgings =
            [
                .. EdgingOffer.Along([EdgingPlace.Top, EdgingPlace.Bottom], EdgingPlace.Corners),
                new(EdgingKind.Ruffle, [EdgingPlace.Top, EdgingPlace.Bottom]) { Usual = [EdgingPlace.Top] },
                new(EdgingKind.Flange, [EdgingPlace.Top]),
            ],
            Additions = [AdditionKind.Ties, AdditionKind.Straps, AdditionKind.Base],
            Fields = [new(ConstructionField.FrontThickness)],
        };

    public Pattern Draft(CushionSpecification cushion)
    {
        var seam = EdgeFinish.Seam(cushion.SeamAllowance);
        (Length rear, Length front) = (cushion.Thickness, cushion.FrontThickness);
        ImmutableArray<OutlineSide> below = cushion.Outline.Sides;
        OutlineSide On(Side side) => below.First(run => run.Side == side);

        // Seen from outside, the right side rises from its start to its end, and the left one falls.
        BoxingSection right = Sloping(EdgeName.Right, On(Side.Right), front, rear, seam),
            left = Sloping(EdgeName.Left, On(Side.Left), rear, front, seam);
        BoxingSection back = BoxingSection.Closing(cushion.Closure, [On(Side.Back)], rear, PartName.Side(EdgeName.Back), seam);
        // A full triangle has no front: the top then meets the underside there, and the ring of the sides is open.
        BoxingSection? low = front > Length.Zero ? BoxingSection.Plain(PartName.Side(EdgeName.Front), [On(Side.Front)], front, seam) : null;

        // Taken from the side panel's own edge, not computed again, so that both sides of the seam agree to the
        // nanometre.
        var slope = new RectangleOutline(cushion.Width, right.Panels[0][EdgeName.Right.With(EdgeWord.Top)].Length);
        Face top = Face.Whole(PartName.Top, FabricRole.Top, slope.Sides, seam),
            bottom = Face.Bottom(cushion, below, seam);
        BoxingSection? SectionOf(OutlineSide run) =>
            run.Side switch
            {
                Side.Right => right,
                Side.Back => back,
                Side.Left => left,
                _ => low,
            };

        IEnumerable<Seam> ring = low is null
            ? [right.JoinedTo(back), back.JoinedTo(left)]
            : [low.JoinedTo(right), right.JoinedTo(back), back.JoinedTo(left), left.JoinedTo(low)];
        Seam[] seams =
        [
            .. bottom.Zipper,
            .. back.Middle is { } middle ? [middle] : Array.Empty<Seam>(),
            .. ring.Select(join => join with { IsCorner = true }),
            .. top.SewnTo(run => SectionOf(run)?.Upper(run) ?? bottom.On(run).Edges[0], _ => SeamKind.Plain),
            .. bottom.SewnTo(SectionOf, run => cushion.Closure is HandSewnClosure && run.Side == Side.Back ? SeamKind.Gap : SeamKind.Plain),
        ];
        IEnumerable<BoxingSection> sections = low is null ? [right, back, left] : [low, right, back, left];
        return new Pattern([.. top.Panels, .. bottom.Panels, .. sections.SelectMany(section => section.Panels)], [.. seams]).Closed();
    }

    /// <summary>The block under the slope: W × D × (Tf + Tr) / 2 (general geometry).</summary>
    public Volume Block(CushionSpecification cushion, Length oversize) =>
        FillBlock.Prism(cushion.Outline.Area, cushion.Outline.Perimeter, (cushion.Thickness + cushion.FrontThickness).HalfUp(), oversize);

    // A side as one looks at its outside, from its start to its end; one of the two heights may be nothing.
    private static BoxingSection Sloping(EdgeName side, OutlineSide run, Length start, Length end, EdgeFinish seam)
    {
        ImmutableArray<Edge> edges = new PanelOutline()
            .East(side.With(EdgeWord.Bottom), run.Length, seam)
            .North(EdgeName.End, end, seam)
            .Towards(side.With(EdgeWord.Top), Length.Zero, start, seam)
            .South(EdgeName.Start, start, seam)
            .Edges();
        return BoxingSection.Of(
            new Panel
            {
                Part = PartName.Side(side),
                Role = FabricRole.Sides,
                Edges = edges,
            },
            run
        );
    }
}
