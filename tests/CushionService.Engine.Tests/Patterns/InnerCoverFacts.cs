using CushionService.Engine.Cutting;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Patterns;

/// <summary>An inner cover has the cover's shape and none of its trimmings: it adds its own pieces, and nothing to what is round the
/// cover (B. Johnston, Making Cushions, 1956: a calico inner of the same size and shape).</summary>
public sealed class InnerCoverFacts
{
    private static readonly CushionSpecification Roll = KnifeEdge(1, 1, new ZipperClosure(Side.Back, Length.Zero, In(0.75m))) with
    {
        Construction = Construction.Bolster,
        Outline = new CircleOutline(In(8)),
        Length = In(24),
    };

    private static readonly CushionSpecification Box = Boxed(20, 16, 3, BackZipper);

    [Fact]
    public void The_ends_of_a_roll_are_piped_once()
    {
        // Sources.Derived: π × 8 is 25.13, 25 3/16 in up to the tape's 1/16 in, and 2 in to close, at both ends: 54 3/8 in.
        EdgingSpecification[] edgings =
        [
            new FlatPipingSpecification([EdgingPlace.Left, EdgingPlace.Right], In(0.125m), WeltCut.Bias),
            new WeltSpecification([EdgingPlace.Left, EdgingPlace.Right], In(0.15625m), WeltCut.Crosswise),
            new BoughtTrimSpecification([EdgingPlace.Left, EdgingPlace.Right], EdgingKind.LipCord, TrimAttachment.SewnIn, In(0.375m)),
        ];
        foreach (EdgingSpecification edging in edgings)
        {
            Assert.Equal(In(54.375m), Around(Roll, edging));
            Assert.Equal(In(54.375m), Around(WithInner(Roll), edging));
        }
    }

    [Fact]
    public void The_corners_of_a_box_are_piped_once()
    {
        // Sources.Derived: four corners of 3 in, with an allowance of 1/2 in at both ends of each.
        var edging = new WeltSpecification([EdgingPlace.Corners], In(0.15625m), WeltCut.Crosswise);

        Assert.Equal(In(16), Around(Box, edging));
        Assert.Equal(In(16), Around(WithInner(Box), edging));
    }

    [Fact]
    public void Its_raw_edges_are_not_finished_for_it_stays_shut()
    {
        // Sources.Practice: no step finishes them, so neither thread nor binding is bought for them.
        Length outer = Threading.RawEdges(Box, Pattern(Box));

        Assert.True(outer > Length.Zero);
        Assert.Equal(outer, Threading.RawEdges(WithInner(Box), Pattern(WithInner(Box))));
    }

    private static Length Around(CushionSpecification cushion, EdgingSpecification edging) =>
        EdgingLength.Of(cushion, Pattern(cushion with { Trim = new TrimSpecification { Edging = edging } }), edging).Total;

    private static CushionSpecification WithInner(CushionSpecification cushion) =>
        cushion with
        {
            Fabrics = new FabricRoles("main", "main", "main", "main") { InnerCover = "main" },
        };

    private static Engine.Patterns.Panels.Pattern Pattern(CushionSpecification cushion) => Drafting.Of(Order(cushion)).Patterns[0];
}
