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

/// <summary>Two sheets larger than the cushion by its thickness, their corners rounded and gathered, so that the edge rises without a
/// boxing.</summary>
/// <remarks>The corner's radius is the thickness T; each quarter circle of πT/2 is drawn up to T, which brings a side of W + T − 2T back to
/// W with half of each corner (common practice, no source; the sum follows).</remarks>
internal sealed class GatheredCorner : IConstruction
{
    public ConstructionOffer Offer { get; } =
        new()
        {
            Kind = Construction.GatheredCorner,
            Description = ConstructionTexts.GatheredCorner,
            Outlines = [OutlineKind.Rectangle],
            Closures =
            [
                new(ClosureKind.Zipper, [Side.Back, Side.Front]),
                new(ClosureKind.HandSewn, [Side.Back, Side.Front, Side.Left, Side.Right]),
            ],
            Thickness = true,
            ZipperInSeam = true,
            Edgings = EdgingOffer.Along([EdgingPlace.Top]),
            Additions = [AdditionKind.Ties, AdditionKind.Base],
            Fields = [new(ConstructionField.InnerCover)],
        };

    public Pattern Draft(CushionSpecification cushion)
    {
        var seam = EdgeFinish.Seam(cushion.SeamAllowance);
        Length thickness = cushion.Thickness;
        ImmutableArray<OutlineSide> runs =
        [
            .. new RoundedRectangleOutline(cushion.Width + thickness, cushion.Depth + thickness, thickness).Sides.SelectMany(Apart),
        ];
        ImmutableArray<Gather> gathers = [.. runs.Where(run => !run.IsStraight).Select(run => new Gather(run.Name, thickness))];
        Face top = Face.Whole(PartName.Top, FabricRole.Top, runs, seam),
            bottom = Face.Whole(PartName.Bottom, FabricRole.Bottom, runs, seam);
        return ZipperSeam
            .AddTo(
                new Pattern(
                    [.. top.Panels.Concat(bottom.Panels).Select(panel => panel with { Gathers = gathers })],
                    [.. bottom.SewnTo(run => new EdgeRef(PartName.Top, run.Name), run => KindOn(run, cushion.Closure))]
                ),
                cushion
            )
            .Closed();
    }

    // Only the straight part of a side opens; a zipper would not follow a gathered corner.
    private static SeamKind KindOn(OutlineSide run, ClosureSpecification closure) =>
        (closure, run.IsStraight && run.Side == closure.Side) switch
        {
            (ZipperClosure, true) => SeamKind.Zipper,
            (HandSewnClosure, true) => SeamKind.Gap,
            _ => SeamKind.Plain,
        };

    // A side and the corners that are drawn with it, each by itself.
    private static IEnumerable<OutlineSide> Apart(OutlineSide side) =>
        side.Path.Length == 1
            ? [side]
            :
            [
                side with
                {
                    Name = side.Side == Side.Right ? EdgeName.Front.With(EdgeWord.Right) : EdgeName.Back.With(EdgeWord.Left),
                    Path = [side.Path[0]],
                },
                side with
                {
                    Path = [side.Path[1]],
                },
                side with
                {
                    Name = side.Side == Side.Right ? EdgeName.Back.With(EdgeWord.Right) : EdgeName.Front.With(EdgeWord.Left),
                    Path = [side.Path[2]],
                },
            ];
}
