using System.Collections.Immutable;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Constructions;

/// <summary>A flat cushion: two faces sewn to each other all round, the opening in a side seam or across the bottom face.</summary>
internal sealed class KnifeEdge : IConstruction
{
    private static readonly ImmutableArray<Side> SideSeams = [Side.Back, Side.Front, Side.Left, Side.Right];

    public ConstructionOffer Offer { get; } =
        new()
        {
            Kind = Construction.KnifeEdge,
            Description = ConstructionTexts.KnifeEdge,
            Outlines = [.. Enum.GetValues<OutlineKind>()],
            Closures =
            [
                new(ClosureKind.Zipper, [.. SideSeams, Side.Bottom]),
                new(ClosureKind.HookAndLoop, [Side.Bottom]),
                new(ClosureKind.Envelope, [Side.Bottom]),
                new(ClosureKind.HandSewn, SideSeams),
                new(ClosureKind.Buttons, [Side.Bottom]),
                new(ClosureKind.Ties, [Side.Bottom]),
            ],
            Thickness = false,
            Edgings =
            [
                .. EdgingOffer.Along([EdgingPlace.Top]),
                new(EdgingKind.FrenchSeam, [EdgingPlace.Top]),
                new(EdgingKind.Ruffle, [EdgingPlace.Top]),
                new(EdgingKind.Flange, [EdgingPlace.Top]),
            ],
            ZipperInSeam = true,
            FlapsEitherWay = true,
            Additions = [AdditionKind.Ties, AdditionKind.Straps, AdditionKind.Tufts, AdditionKind.Base],
            Fields = [new(ConstructionField.Channels), new(ConstructionField.CornerTaper), new(ConstructionField.InnerCover)],
        };

    public Pattern Draft(CushionSpecification cushion)
    {
        var seam = EdgeFinish.Seam(cushion.SeamAllowance);
        ImmutableArray<OutlineSide> runs = cushion.Outline.Sides;
        Face top = Face.Whole(PartName.Top, FabricRole.Top, runs, seam);
        Face bottom = Face.Bottom(cushion, runs, seam, top);
        IEnumerable<Seam> around = bottom.SewnTo(run => new EdgeRef(PartName.Top, run.Name), run => KindOn(run, cushion.Closure));
        var pillow = new Pattern([.. top.Panels, .. bottom.Panels], [.. bottom.Zipper, .. around]);
        // Marks come last: a zipper in the side seam splits the side's edge, and channels and tapers are on the top
        // alone.
        return CornerTapering.AddTo(Channels.AddTo(ZipperSeam.AddTo(pillow, cushion), cushion), cushion).Closed();
    }

    // A closure in a side seam takes the whole side here; a zipper's ends are set in from the corners later.
    private static SeamKind KindOn(OutlineSide run, ClosureSpecification closure) =>
        closure switch
        {
            ZipperClosure when run.Side == closure.Side => SeamKind.Zipper,
            HandSewnClosure when run.Side == closure.Side => SeamKind.Gap,
            _ => SeamKind.Plain,
        };
}
