using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns;

/// <summary>A box of two sheets, without a boxing: a square of half the thickness is cut from each corner, the sides are sewn, and each
/// opened notch is sewn across.</summary>
/// <remarks>Each sheet is W + T by D + T on the seam line. The notch's edges move outward by the allowance as the sheet's do, so its cut
/// square is T/2 from the raw edges, and the corner's seam is T long (follows from matching the side seams).</remarks>
internal sealed class Mitred : IConstruction
{
    private static readonly ImmutableArray<Side> SideSeams = [Side.Back, Side.Front, Side.Left, Side.Right];
    private static readonly ImmutableArray<(string Name, string Corner)> Round =
    [
        ("front", "front-right"),
        ("right", "back-right"),
        ("back", "back-left"),
        ("left", "front-left"),
    ];

    public ConstructionOffer Offer { get; } =
        new()
        {
            Kind = Construction.Mitred,
            Description = "Two sheets whose notched corners make the box.",
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
            Edgings = [new(EdgingKind.Welt, [EdgingPlace.Top])],
            Additions = [AdditionKind.Ties, AdditionKind.Base],
            Fields = [new(ConstructionField.InnerCover)],
        };

    public Pattern Draft(CushionSpecification cushion)
    {
        // The two halves of the thickness make it up to the nanometre.
        Length upper = cushion.Thickness.HalfUp(),
            lower = cushion.Thickness - upper;
        Panel top = Sheet("top", FabricRole.Top, cushion, upper),
            below = Sheet("bottom", FabricRole.Bottom, cushion, lower);
        Face bottom = Face.Divided(Face.Of(below), cushion.Closure);
        IEnumerable<Seam> sides = bottom
            .SewnTo(run => new EdgeRef("top", run.Name), run => KindOn(run.Name, cushion.Closure))
            .Where(seam => Round.Any(round => round.Name == seam.One[0].Edge));
        return LappedZipper
            .AddTo(
                new Pattern(
                    [top, .. bottom.Panels],
                    [
                        .. bottom.Zipper,
                        .. sides,
                        .. Round.Select(round => new Seam(SeamKind.Plain, Both($"{round.Corner}-1"), Both($"{round.Corner}-2"))),
                    ]
                ),
                cushion
            )
            .Closed();

        // The notches lie off the closure's lines, so that each edge is whole.
        ImmutableArray<EdgeRef> Both(string edge) =>
            [new EdgeRef("top", edge), new EdgeRef(bottom.Panels.First(panel => panel.Edges.Any(known => known.Name == edge)).Part, edge)];
    }

    private static SeamKind KindOn(string side, ClosureSpecification closure) =>
        (closure, side.Equals(closure.Side.ToString(), StringComparison.OrdinalIgnoreCase)) switch
        {
            (ZipperClosure, true) => SeamKind.Zipper,
            (HandSewnClosure, true) => SeamKind.Gap,
            _ => SeamKind.Plain,
        };

    private static Panel Sheet(string part, FabricRole role, CushionSpecification cushion, Length half)
    {
        (Length width, Length depth) = (cushion.Width, cushion.Depth);
        var seam = EdgeFinish.Seam(cushion.SeamAllowance);
        ImmutableArray<Edge> edges = new PanelOutline(half, Length.Zero)
            .East("front", width, seam)
            .North("front-right-1", half, seam)
            .East("front-right-2", half, seam)
            .North("right", depth, seam)
            .West("back-right-1", half, seam)
            .North("back-right-2", half, seam)
            .West("back", width, seam)
            .South("back-left-1", half, seam)
            .West("back-left-2", half, seam)
            .South("left", depth, seam)
            .East("front-left-1", half, seam)
            .South("front-left-2", half, seam)
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
