using CushionService.Engine.Layouts;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Nesting;

namespace CushionService.Engine.Tests.Materials;

/// <summary>Foam is sawn to the cushion's shape.</summary>
public sealed class FoamShapeFacts
{
    private static readonly FillSpecification Fill = new(FillKind.Foam, "foam", null, Length.Zero, 0.9m);

    public static TheoryData<Outline, string, double> Shapes() =>
        new()
        {
            { new CircleOutline(In(16)), "circle of 16 in × 16 in × 3 in", 201.06 },
            { new OvalOutline(In(24), In(16)), "oval of 24 in × 16 in × 3 in", 301.6 },
            { new HalfRoundOutline(In(20)), "half-round of 20 in × 10 in × 3 in", 157.08 },
            { new RoundEndedOutline(In(30), In(14)), "round-ended block of 30 in × 14 in × 3 in", 377.94 },
            { new TrapezoidOutline(In(60), In(40), In(18), In(10)), "trapezoid of 60 in × 18 in × 3 in", 900 },
            { new RegularPolygonOutline(6, In(10)), "hexagon of 20 in × about 17 5/16 in × 3 in", 259.81 },
        };

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Foam_of_a_shape_names_its_template_and_its_area(Outline outline, string shape, double squareInches)
    {
        // Sources.Mathematics: the areas of the outlines.
        CushionSpecification cushion = Boxed(60, 20, 3, HandSewn, BoxingJoins.Back) with
        {
            Outline = outline,
            Fill = Fill,
        };
        FoamBlock block = FoamBlock.Of(cushion, paired: true).Single();

        Assert.Equal($"1 × {shape}, sawn by a template of {squareInches:0.##} in²", FoamTexts.Need(block.Facts()).ToString());
        Assert.Equal(outline.Kind, block.Cut(1, null).Shape);
        Assert.NotEmpty(block.Cut(1, null).Template);
    }

    [Fact]
    public void A_bull_nose_and_a_roll_are_said()
    {
        // Sources.Practice
        CushionSpecification front = Boxed(24, 20, 4, BackZipper) with
        {
            Construction = Construction.Waterfall,
            Front = FrontShape.BullNose,
            Fill = Fill,
        };
        CushionSpecification roll = front with
        {
            Construction = Construction.Bolster,
            Outline = new CircleOutline(In(8)),
            Length = In(24),
            Thickness = Length.Zero,
        };

        Assert.Equal("1 × block of 24 in × 20 in × 4 in, its front rounded over", Text(front));
        Assert.Equal("1 × block of 8 in × 24 in × 8 in, sawn to a roll", Text(roll));
        Assert.Empty(FoamBlock.Of(roll, paired: true).Single().Template);
    }

    [Fact]
    public void A_template_grows_with_the_foam()
    {
        // Sources.Mathematics: a tee of 26 × 22 grows by 1/4 in each way; its bounding box by 1/2.
        CushionSpecification tee = Boxed(26, 22, 3, HandSewn) with
        {
            Outline = new TeeOutline(In(26), In(22), In(3), In(5)),
            Fill = Fill with { Oversize = In(0.5m) },
        };
        FoamBlock block = FoamBlock.Of(tee, paired: true).Single();

        Assert.Equal((In(26.5m), In(22.5m)), (block.Template.Max(corner => corner.X), block.Template.Max(corner => corner.Y)));
        Assert.Equal(8, block.Template.Length);
    }

    [Fact]
    public void Ells_share_the_sheet_that_their_boxes_do_not()
    {
        // Sources.Derived: an ell of 20 × 40 with arms of 10 and its twin, turned, lie within 30 1/4 × 40 and a kerf; two boxes need 40
        // 1/4.
        StockSpecification sheet = new()
        {
            Id = "foam",
            Kind = MaterialKind.Foam,
            Width = In(31),
            Length = In(41),
            Thickness = In(3),
        };
        CushionSpecification ell = Boxed(20, 40, 3, HandSewn) with
        {
            Outline = new EllOutline(In(20), In(40), In(10), In(30), Side.Right),
            Fill = Fill,
            Quantity = 2,
        };
        FoamBlock[] blocks = [.. FoamBlock.Of(ell, paired: true)];
        var sheets = FoamSheets.Of(sheet, blocks, In(0.25m), SideSearch.Alone(Effort.Quick, CancellationToken.None));

        Assert.Equal(new FoamSheets(1, 1), sheets);
        Assert.Equal(
            new FoamSheets(2, 2),
            FoamSheets.Of(
                sheet,
                [.. FoamBlock.Of(ell with { Quantity = 3 }, paired: true)],
                In(0.25m),
                SideSearch.Alone(Effort.Quick, CancellationToken.None)
            )
        );
    }

    [Fact]
    public void A_disc_as_wide_as_its_sheet_lies_on_it()
    {
        StockSpecification sheet = new()
        {
            Id = "foam",
            Kind = MaterialKind.Foam,
            Width = In(24.3m),
            Length = In(72),
            Thickness = In(3),
        };
        CushionSpecification disc = Boxed(24, 24, 3, HandSewn) with { Outline = new CircleOutline(In(24.3m)), Fill = Fill };

        Assert.Equal(
            new FoamSheets(1, 1),
            FoamSheets.Of(sheet, [.. FoamBlock.Of(disc, paired: true)], In(0.25m), SideSearch.Alone(Effort.Quick, CancellationToken.None))
        );
    }

    private static string Text(CushionSpecification cushion) =>
        FoamTexts.Need(FoamBlock.Of(cushion, paired: true).Single().Facts()).ToString();
}
