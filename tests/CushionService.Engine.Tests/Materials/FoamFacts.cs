using System.Collections.Immutable;
using CushionService.Engine.Layouts;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Nesting;

namespace CushionService.Engine.Tests.Materials;

public sealed class FoamFacts
{
    private static readonly StockSpecification Sheet = new()
    {
        Id = "foam",
        Kind = MaterialKind.Foam,
        Width = In(24),
        Length = In(72),
        Thickness = In(2),
        Density = 28.8332m,
        Firmness = new Force(155.688m),
        SupportFactor = 2,
    };

    private static readonly FillSpecification Fill = new(FillKind.Foam, "foam", 28.8332m, Length.Zero, 0.9m);

    [Theory]
    [InlineData(2, 1)]
    [InlineData(4, 2)]
    [InlineData(5, 3)]
    [InlineData(1, 1)]
    [InlineData(2.0001, 2)]
    public void A_block_higher_than_its_stock_is_glued_from_layers(double thickness, int layers) =>
        Assert.Equal(layers, FoamBlock.Of(Seat(24, 22, (decimal)thickness), paired: true).Single().Layers(In(2)));

    [Fact]
    public void Both_faces_of_every_joint_are_coated()
    {
        // Sources.Derived: three layers of 24 × 22 have two joints of 528 in², four faces.
        FoamBlock block = FoamBlock.Of(Seat(24, 22, 6), paired: true).Single();

        Assert.Equal(4m * 528 * 645.16m, block.Glued(In(2)));
        Assert.Equal(0, block.Glued(In(6)));
    }

    [Theory]
    [InlineData(24, 24, 3, 2, 2)]
    [InlineData(23.75, 23.75, 3, 2, 1)]
    [InlineData(24, 72, 1, 2, 1)]
    [InlineData(11.875, 23.75, 6, 2, 1)]
    [InlineData(12, 23.75, 6, 2, 2)]
    [InlineData(24, 22, 1, 4, 1)]
    [InlineData(24, 22, 2, 4, 2)]
    public void Layers_are_cut_from_sheets_with_a_kerf_between_them(double width, double depth, int cushions, double thickness, int sheets)
    {
        // Sources.Derived: on 24 × 72 with 1/4 in between, three of 23 3/4 reach 71 3/4; three of 24 would reach 72 1/2.
        Material foam = Foam(
            Order(Seat((decimal)width, (decimal)depth, (decimal)thickness) with { Quantity = cushions }) with
            {
                Stocks = [Sheet],
            }
        );

        Assert.Equal((sheets, SaleUnit.Each), ((int)(decimal)foam.Quantity, foam.Unit));
    }

    [Fact]
    public void Cushions_share_the_sheets_of_their_stock()
    {
        // Sources.Derived: 24 × 36 and 24 × 35 3/4 and a kerf make 72.
        OrderSpecification order = Order(Seat(24, 36, 2)) with
        {
            Stocks = [Sheet],
        };
        order = order with { Cushions = [.. order.Cushions, Seat(24, 35.75m, 2) with { Id = "other" }] };

        Material foam = Foam(order);
        Assert.Equal(1, foam.Quantity);
        Assert.Equal(["seat", "other"], foam.Uses.Select(use => use.Cushion));
        Assert.EndsWith("1 sheet, and fewer cannot hold them", foam.Because.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_bought_weighs_what_fills_the_cushions()
    {
        // Sources.Mathematics: 24 × 22 × 4 at 1.8 lb/ft³ is 2.2 lb; a round of 16 × 3 is 0.62832 lb.
        Assert.Equal(2.2, (double)Foam(Order(Seat(24, 22, 4)) with { Stocks = [Sheet] }).Weight!.Value.Pounds, 1e-4);

        CushionSpecification round = Boxed(16, 16, 3, HandSewn, BoxingJoins.Back) with { Outline = new CircleOutline(In(16)), Fill = Fill };
        Assert.Equal(0.62832, (double)Foam(Order(round) with { Stocks = [Sheet] }).Weight!.Value.Pounds, 1e-4);
    }

    [Theory]
    [InlineData(1, 1, 6)]
    [InlineData(2, 1, 8)]
    [InlineData(5, 3, 8)]
    public void Two_wedges_come_from_one_block(int wedges, int blocks, int highest)
    {
        // Sources.Practice: 2 in at the front and 6 at the back make 8 together.
        CushionSpecification wedge = Seat(24, 20, 6) with
        {
            Construction = Construction.Wedge,
            FrontThickness = In(2),
            Quantity = wedges,
        };
        FoamBlock[] paired = [.. FoamBlock.Of(wedge, paired: true)];

        Assert.Equal((blocks, In(highest)), (paired.Sum(block => block.Count), paired.Max(block => block.Height)));
        Assert.Equal(wedges, paired.Sum(block => block.Count * block.Makes));
    }

    [Theory]
    [InlineData(7, 3.5, 3, 1)] // 10 1/2 are four layers, and 7 are three: four beat six
    [InlineData(2.75, 1.5, 3, 0)] // 4 1/4 are two layers, as two wedges of one each, which need no glue
    [InlineData(2, 1, 3, 1)] // both in one layer
    public void Wedges_are_paired_where_that_takes_fewer_layers(double back, double front, double sheet, int pairs)
    {
        // Sources.Practice.
        CushionSpecification wedge = Seat(24, 20, (decimal)back) with
        {
            Construction = Construction.Wedge,
            FrontThickness = In((decimal)front),
            Quantity = 2,
        };

        Assert.Equal(pairs, FoamBlock.Of(wedge, paired: true, In((decimal)sheet)).Count(block => block.Makes == 2));
    }

    [Theory]
    [InlineData(24.25, 30, "24 1/4 in × 30 in", "24 1/4 in × 15 in", 24.25)]
    [InlineData(100, 18, "100 in × 18 in", "50 in × 18 in", 18)]
    public void Foam_larger_than_its_sheet_is_glued_from_parts_and_said(double width, double depth, string size, string part, double joint)
    {
        // Sources.Practice: the fewest parts, along the shorter joint. Sources.Derived: both faces of a joint as high as the foam, 2 in.
        OrderSpecification order = Order(Seat((decimal)width, (decimal)depth, 2) with { Pointer = "/cushions/0" }) with
        {
            Stocks = [Sheet],
            Fabrics = [Fabric with { Width = In(118) }],
        };
        Violation warning = Drafting.Of(order).Warnings.Single(one => one.Code == "foam-joined");
        ImmutableArray<Material> bought = Trade.Quote(order).Materials;

        Assert.Empty(Drafting.Of(order).Violations);
        Assert.Equal("/cushions/0/fill/stock", warning.Pointer);
        Assert.Equal(
            $"The foam of seat, {size}, is larger than a sheet of foam, 24 in × 72 in. It is glued from 2 parts.",
            warning.Detail.ToString()
        );
        Assert.Contains(
            $"glued from 2 parts of {part}",
            bought.Single(one => one.Kind == MaterialKind.Foam).Because.ToString(),
            StringComparison.Ordinal
        );
        Assert.Contains(
            $"of joint, 2 in high, {2 * 2 * joint:0.##} in²",
            bought.Single(one => one.Kind == MaterialKind.Adhesive).Because.ToString(),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(111.206, 25)]
    [InlineData(155.688, 35)]
    public void A_pound_of_force_is_4_44822_newtons(double newtons, double pounds) =>
        // Sources.Mathematics: 0.45359237 kg × 9.80665 m/s².
        Assert.Equal(pounds, (double)new Force((decimal)newtons).Pounds, 1e-3);

    [Fact]
    public void A_foam_is_told_by_density_firmness_and_support()
    {
        // Sources.FoamFirmness: the support factor is the force at 65 % over that at 25 %; 2.0 at 35 is 70.
        string because = Foam(Order(Seat(24, 22, 2)) with { Stocks = [Sheet] }).Because.ToString();

        Assert.Contains("28.833 kg/m³, firmness 35 lbf at 25 % and 70 lbf at 65 %: 1.10 lb", because, StringComparison.Ordinal);
    }

    [Fact]
    public void No_layout_of_generated_blocks_beats_its_bound_or_needs_a_sheet_for_each()
    {
        var random = new Random(54);
        for (var i = 0; i < 60; i++)
        {
            FoamBlock[] blocks =
            [
                .. Enumerable
                    .Range(0, random.Next(1, 5))
                    .SelectMany(_ =>
                        FoamBlock.Of(
                            Seat(random.Next(16, 192) / 8m, random.Next(16, 576) / 8m, random.Next(2, 14) / 2m) with
                            {
                                Quantity = random.Next(1, 4),
                            },
                            paired: true
                        )
                    ),
            ];
            FoamSheets sheets = FoamSheets.Of(Sheet, blocks, In(0.25m), SideSearch.Alone(Effort.Quick, CancellationToken.None));
            int layers = blocks.Sum(block => block.Count * block.Layers(In(2)));
            decimal area = blocks.Sum(block => block.Count * block.Layers(In(2)) * block.Footprint);

            Assert.InRange(sheets.Count, sheets.Least, layers);
            Assert.True(
                sheets.Count * In(24).In(LengthUnit.Millimetre) * In(72).In(LengthUnit.Millimetre) >= area,
                "The layers have more area than the sheets."
            );
        }
    }

    private static CushionSpecification Seat(decimal width, decimal depth, decimal thickness) =>
        Boxed(width, depth, thickness, HandSewn) with
        {
            Fill = Fill,
        };

    private static Material Foam(OrderSpecification order) =>
        Trade
            .Quote(order with { Fabrics = [Fabric with { Width = In(118) }] })
            .Materials.Single(material => material.Kind == MaterialKind.Foam);
}
