using CushionService.Engine.Cutting;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Specifications;

/// <summary>Figures that handbooks, bulletins and standards print, and what the engine makes of them.</summary>
public sealed class PublishedPracticeFacts
{
    [Fact]
    public void A_plain_cushion_bears_half_an_inch_all_round_and_its_side_is_about_four_inches()
    {
        // Sources.FieldOfficer: 1/2 in all round; a side panel usually about 4 in, best under 20 in across.
        Assert.Equal(In(0.5m), WorkroomPractice.Imperial.SeamAllowance);
        Assert.StartsWith(
            "top 20 × 20; bottom 20 × 20; front 20 × 5",
            CutList(Order(Boxed(19, 19, 4, HandSewn))),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_loose_cover_bears_one_inch_seams()
    {
        // Sources.SlipCovers: 1 in seams.
        CutPiece top = Drafting.Of(Order(KnifeEdge(18, 16, HandSewn) with { SeamAllowance = In(1) })).Pieces[0];

        Assert.Equal((In(20), In(18)), (top.Width, top.Length));
    }

    [Theory]
    [InlineData(16, 52)]
    [InlineData(24, 78)]
    [InlineData(10, 32.5)]
    public void An_old_rule_s_border_of_3_1_4_diameters_covers_the_seam_line_and_its_joins(int diameter, double border)
    {
        // Sources.HistoricBorder: at least 3 1/4 times the diameter; π D and one join of 2 × 1/2 in lie within it from 10 in on.
        CushionSpecification round = Boxed(diameter, diameter, 3, HandSewn, BoxingJoins.Back) with
        {
            Outline = new CircleOutline(In(diameter)),
        };
        Pattern pattern = ConstructionRegistry.Of(Construction.Boxed).Draft(round);
        Length strip = pattern
            .Panels.Where(panel => panel.Role == FabricRole.Sides)
            .Aggregate(Length.Zero, (sum, panel) => sum + panel.Width);

        Assert.Equal(Math.PI * diameter, (double)strip.In(LengthUnit.Inch), 0.0001);
        Assert.True(strip + 2 * In(0.5m) <= In((decimal)border) + In(0.001m), "The old border is shorter than the strip and its join.");
        Assert.True(strip + 2 * In(0.5m) + In(2) > In((decimal)border), "The old border is far longer than the strip.");
    }

    [Fact]
    public void A_box_x_on_inch_webbing_is_6_83_inches_of_stitching_and_an_inch_long()
    {
        // Sources.BoxX: 1 in long on 1 in webbing; the path is general mathematics, 2 (1 + 1) + 2 √2.
        Assert.Equal(6.82843, (double)Threading.BoxedX(In(1), In(1)).In(LengthUnit.Inch), 0.00001);

        var bare = Boxed(18, 15, 2, HandSewn);
        CushionSpecification carried = bare with { Handle = Strap with { Kind = HandleKind.Webbing, Width = In(1) } };
        Length more = Stitching(carried) - Stitching(bare);
        Assert.Equal((2 * 10.5) + (2 * 6.82843), (double)more.In(LengthUnit.Inch), 0.0001);
    }

    [Fact]
    public void The_ends_of_a_continuous_line_lie_over_each_other_by_more_than_half_an_inch() =>
        // Sources.TentRepair: at least 1/2 in; a welt closes over 2.
        Assert.True(WorkroomPractice.Imperial.Trims.WeltOverlap >= In(0.5m));

    [Fact]
    public void Edge_stitching_stands_an_eighth_from_the_fold() =>
        // Sources.PatchTurnUnder: 1/8 in.
        Assert.Equal((In(0.125m), In(0.375m)), (WorkroomPractice.Imperial.EdgeDistance, WorkroomPractice.Imperial.Trims.PocketTurnUnder));

    [Fact]
    public void Foam_within_the_trade_s_tolerance_is_no_larger_than_foam_cut_half_an_inch_over()
    {
        // Sources.FoamTolerance: slab goods + 1/2, − 0 in length, + 1/4, − 0 in width: 24 1/2 × 22 1/4.
        Volume largest = Filling.Foam(Boxed(24.5m, 22.25m, 4, HandSewn), Length.Zero),
            over = Filling.Foam(Boxed(24, 22, 4, HandSewn), In(0.5m));
        Volume nominal = Filling.Foam(Boxed(24, 22, 4, HandSewn), Length.Zero);

        Assert.True(nominal.CubicMillimetres < largest.CubicMillimetres && largest.CubicMillimetres <= over.CubicMillimetres);
    }

    [Theory]
    [InlineData(StitchType.Chainstitch, "single chain")]
    [InlineData(StitchType.Lockstitch, "lock")]
    [InlineData(StitchType.DoubleChainstitch, "double chain")]
    [InlineData(StitchType.Overedge, "overedge")]
    [InlineData(StitchType.SafetyStitch, "overedge")]
    public void Stitch_types_are_numbered_by_their_class(StitchType type, string name)
    {
        // Sources.StitchClasses: 100 single chain, 200 hand, 300 lock, 400 double chain, 500 overedge; a lockstitch takes least thread.
        string[] classes = ["single chain", "hand", "lock", "double chain", "overedge", "cover"];

        Assert.Equal(name, classes[((int)type / 100) - 1]);
        Assert.True(Threading.Consumption(StitchType.Lockstitch, 0.08m, 8) <= Threading.Consumption(type, 0.08m, 8, 0.2m));
    }

    [Theory]
    [InlineData(0.5, 3, Sources.NewDressmaker)]
    [InlineData(0.25, 2, Sources.NewDressmaker)]
    public void A_ruffle_s_fullness_is_that_of_its_fabric(double depth, int fullness, string source)
    {
        // Very soft sheer about 3, fabric with some body about 2.
        var ruffle = new RuffleSpecification([EdgingPlace.Top], Fraction.Of(fullness, 1), In((decimal)depth), RuffleLining.Folded);
        Pattern pattern = Drafting.Of(Order(KnifeEdge(10, 6, HandSewn) with { Trim = new TrimSpecification { Edging = ruffle } })).Patterns[
            0
        ];

        Assert.Equal(
            fullness * In(32),
            pattern.Panels.Where(panel => panel.Role == FabricRole.Edging).Aggregate(Length.Zero, (sum, panel) => sum + panel.Width)
        );
    }

    private static Length Stitching(CushionSpecification cushion) => Threading.Stitching(cushion, Drafting.Of(Order(cushion)).Patterns[0]);
}
