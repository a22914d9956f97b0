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

/// <summary>A box of two sheets, without a boxing: a square of half the thickness is cut from each corner, the sides are sewn, and each
/// opened notch is sewn across.</summary>
/// <remarks>Each sheet is W + T by D + T on the seam line. The notch's edges move outward by the allowance as the sheet's do, so its cut
/// square is T/2 from the raw edges, and the corner's seam is T long (follows from matching the side seams).</remarks>
internal sealed class Mitred : IConstruction
{
    private static readonly ImmutableArray<Side> SideSeams = [Side.Back, Side.Front, Side.Left, Side.Right];

    // The sides counter-clockwise, each with the corner at its end.
    private static readonly ImmutableArray<(EdgeName Name, EdgeName Corner)> Round =
    [
        (EdgeName.Front, EdgeName.Front.With(EdgeWord.Right)),
        (EdgeName.Right, EdgeName.Back.With(EdgeWord.Right)),
        (EdgeName.Back, EdgeName.Back.With(EdgeWord.Left)),
        (EdgeName.Left, EdgeName.Front.With(EdgeWord.Left)),
    ];

    public ConstructionOffer Offer { get; } =
        new()
        {
            Kind = Construction.Mitred,
            Description = ConstructionTexts.Mitred,
            Outlines = [OutlineKind.Rectangle],
            Closures =
            [
                new(ClosureKind.Zipper, [.. SideSeams, Side.Bottom]),
                new(ClosureKind.HookAndLoop, [Side.Bottom]),
                new(ClosureKind.Envelope, [Side.Bottom]),
                new(ClosureKind.HandSewn, SideSeams),
                new(ClosureKind.Buttons, [Side.Bottom]),
                new(ClosureKind.Ties, [Side.Bottom]),
            ],
            Thickness = true,
            ZipperInSeam = true,
            Edgings = EdgingOffer.Along([EdgingPlace.Top]),
            Additions = [AdditionKind.Ties, AdditionKind.Base],
            Fields = [new(ConstructionField.InnerCover)],
        };

    public Pattern Draft(CushionSpecification cushion)
    {
        // The two halves of the thickness make it up to the nanometre.
        Length upper = cushion.Thickness.HalfUp(),
            lower = cushion.Thickness - upper;
        Panel top = Sheet(PartName.Top, FabricRole.Top, cushion, upper),
            below = Sheet(PartName.Bottom, FabricRole.Bottom, cushion, lower);
        Face bottom = Face.Divided(Face.Of(below), cushion.Closure);
        // The edges of the notches are left out: they are sewn to each other, and not to the other sheet.
        IEnumerable<Seam> sides = bottom
            .SewnTo(run => new EdgeRef(PartName.Top, run.Name), run => KindOn(run.Name, cushion.Closure))
            .Where(seam => Round.Any(round => round.Name == seam.One[0].Edge));
        return ZipperSeam
            .AddTo(
                new Pattern(
                    [top, .. bottom.Panels],
                    [
                        .. bottom.Zipper,
                        .. sides,
                        // Opened, a notch is two lines as long as the cushion is thick: the first edges of both sheets,
                        // and the second ones.
                        .. Round.Select(round => new Seam(
                            SeamKind.Plain,
                            Both(round.Corner.With(EdgeWord.First)),
                            Both(round.Corner.With(EdgeWord.Second))
                        )),
                    ]
                ),
                cushion
            )
            .Closed();

        // The notches lie off the closure's lines, so that each edge is whole.
        ImmutableArray<EdgeRef> Both(EdgeName edge) =>
            [
                new EdgeRef(PartName.Top, edge),
                new EdgeRef(bottom.Panels.First(panel => panel.Edges.Any(known => known.Name == edge)).Part, edge),
            ];
    }

    // Side seams open as on a flat cushion; the notches never do.
    private static SeamKind KindOn(EdgeName run, ClosureSpecification closure) =>
        (closure, run == EdgeOf(closure.Side)) switch
        {
            (ZipperClosure, true) => SeamKind.Zipper,
            (HandSewnClosure, true) => SeamKind.Gap,
            _ => SeamKind.Plain,
        };

    // The default name for a side that has no edge of its own, the bottom: it is equal to no edge.
    private static EdgeName EdgeOf(Side side) =>
        side switch
        {
            Side.Front => EdgeName.Front,
            Side.Right => EdgeName.Right,
            Side.Back => EdgeName.Back,
            Side.Left => EdgeName.Left,
            _ => default,
        };

    // Twelve edges: four sides, and two edges of a notch at each corner, which are sewn to each other.
    private static Panel Sheet(PartName part, FabricRole role, CushionSpecification cushion, Length half)
    {
        (Length width, Length depth) = (cushion.Width, cushion.Depth);
        var seam = EdgeFinish.Seam(cushion.SeamAllowance);
        ImmutableArray<Edge> edges = new PanelOutline(half, Length.Zero)
            .East(EdgeName.Front, width, seam)
            .North(EdgeName.Front.With(EdgeWord.Right).With(EdgeWord.First), half, seam)
            .East(EdgeName.Front.With(EdgeWord.Right).With(EdgeWord.Second), half, seam)
            .North(EdgeName.Right, depth, seam)
            .West(EdgeName.Back.With(EdgeWord.Right).With(EdgeWord.First), half, seam)
            .North(EdgeName.Back.With(EdgeWord.Right).With(EdgeWord.Second), half, seam)
            .West(EdgeName.Back, width, seam)
            .South(EdgeName.Back.With(EdgeWord.Left).With(EdgeWord.First), half, seam)
            .West(EdgeName.Back.With(EdgeWord.Left).With(EdgeWord.Second), half, seam)
            .South(EdgeName.Left, depth, seam)
            .East(EdgeName.Front.With(EdgeWord.Left).With(EdgeWord.First), half, seam)
            .South(EdgeName.Front.With(EdgeWord.Left).With(EdgeWord.Second), half, seam)
            .Edges();
        return new Panel
        {
            Part = part,
            Role = role,
            Edges = edges,
            Match = new(half + width.HalfUp(), half + depth.HalfUp()),
        };
    }
}
