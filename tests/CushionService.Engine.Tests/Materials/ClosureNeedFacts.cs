using CushionService.Engine.Instructions;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Tests.Materials;

public sealed class ClosureNeedFacts
{
    private static readonly StockSpecification Chain = new()
    {
        Id = "chain",
        Kind = MaterialKind.Zipper,
        Sold = new UnitSale(SaleUnit.Yd, 0.125m, 0),
    };

    [Theory]
    [InlineData("12 14 22 29 30", 29, false)]
    [InlineData("12 14 22 30 31", 30, false)]
    [InlineData("12 14 30 31", 30, false)]
    [InlineData("12 14 32", 32, true)]
    [InlineData("12 14", 14, false)]
    public void A_closed_zipper_is_the_next_stock_length_that_ends_clear_of_the_section(string stocked, int chosen, bool shortened)
    {
        // Sources.Practice: a section of 30 in takes 29 at most; one up to 31 is caught in the joins, a longer one shortened. The longest
        // stock within the opening and what can be shortened is wanted: of 22, 30 and 31 the first is 7 in short of the opening, which is
        // a fault; 30 and 31 both open the whole 29 once shortened to it, and 30 has less to shorten.
        ClosedZipper zipper = ClosedZipper.For(Box, Drafting.Of(Order(Box, Wide)).Patterns[0], Closed(stocked))!;

        Assert.Equal((In(chosen), In(29), shortened), (zipper.Stock.Length!.Value, zipper.Room, zipper.Shortened));
    }

    [Fact]
    public void A_closed_zipper_in_a_side_seam_is_2_to_3_inches_shorter_than_the_side()
    {
        // Sources.Practice
        CushionSpecification pillow = KnifeEdge(18, 18, BackZipper);
        ClosedZipper zipper = ClosedZipper.For(pillow, Drafting.Of(Order(pillow)).Patterns[0], Closed("14 15 16"))!;

        Assert.Equal(In(15), zipper.Stock.Length);
    }

    [Fact]
    public void A_closed_zipper_is_bought_one_by_one_under_its_own_name()
    {
        Material zipper = Bought(MaterialKind.Zipper, Closed("14 29"));

        Assert.Equal(("zip-29", 1m, SaleUnit.Each), (zipper.Item, zipper.Quantity, zipper.Unit));
        Assert.Equal("seat: 1 × zipper of 29 in in a seam of 30 in, at most 29 in fit", zipper.Because.ToString());
    }

    [Fact]
    public void Chain_needs_a_slider_for_each_cover()
    {
        OrderSpecification order = Order(Box with { Quantity = 3 }, Wide) with { Stocks = [Chain] };
        Material[] bought = [.. Quote(order).Materials.Where(material => material.Kind is MaterialKind.Zipper or MaterialKind.Slider)];

        // Sources.Practice: 3 × 31 in is 93 in, sold as 2 5/8 yd.
        Assert.Equal([("chain", 2.625m), ("slider", 3m)], bought.Select(material => (material.Item, material.Quantity)));
    }

    [Fact]
    public void Zippers_of_another_size_or_colour_are_lines_of_their_own()
    {
        // Sources.Practice: 31 in of #10 with two sliders and 31 in of #5 with one, both from a roll.
        OrderSpecification order = Order(Box, Wide) with
        {
            Stocks = [Chain],
            Cushions =
            [
                Box with
                {
                    Closure = BackZipper with { Size = 10, Sliders = 2, Colour = "navy" },
                },
                Box with
                {
                    Id = "other",
                    Closure = BackZipper with { Size = 5 },
                },
            ],
        };
        Material[] bought = [.. Quote(order).Materials.Where(material => material.Kind is MaterialKind.Zipper or MaterialKind.Slider)];

        Assert.Equal(
            [("chain", 0.875m), ("chain", 0.875m), ("slider", 1m), ("slider", 2m)],
            bought.Select(material => (material.Item, material.Quantity)).Order()
        );
        Assert.Contains(bought, material => material.Because.ToString().Contains("31 in of #10 navy chain", StringComparison.Ordinal));
        Assert.Contains(bought, material => material.Because.ToString().Contains("1 × 2 for the #10 navy chain", StringComparison.Ordinal));
    }

    [Fact]
    public void Two_sliders_are_not_found_on_a_zipper_with_closed_ends()
    {
        // Sources.Practice: it has the slider that it was made with; the second goes on chain.
        OrderSpecification order = Order(Box with { Closure = BackZipper with { Sliders = 2 } }, Wide) with
        {
            Stocks =
            [
                new StockSpecification
                {
                    Id = "closed",
                    Kind = MaterialKind.Zipper,
                    Length = In(30),
                },
            ],
        };
        Material zipper = Quote(order).Materials.Single(material => material.Kind == MaterialKind.Zipper);

        Assert.Equal(("zipper", true), (zipper.Item, zipper.IsMadeToSize));
        Assert.Contains("with 2 sliders", zipper.Because.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_sliders_are_put_on_before_the_zipper_is_sewn_in()
    {
        Step step = Quote(Order(Box with { Closure = BackZipper with { Sliders = 2 } }, Wide))
            .Steps.Single(step => step.Text.ToString()!.Contains("sliders", StringComparison.Ordinal));

        Assert.NotNull(step);
    }

    [Fact]
    public void What_several_cushions_need_is_rounded_up_once()
    {
        // 31 and 27 in of chain are 58 in, 1 5/8 yd; rounded one by one they would be 7/8 and 3/4.
        OrderSpecification order = Order(Box, Wide) with
        {
            Stocks = [Chain],
        };
        order = order with { Cushions = [Box, Boxed(20, 20, 4, BackZipper, BoxingJoins.Back) with { Id = "other" }] };
        Material chain = Quote(order).Materials.Single(material => material.Kind == MaterialKind.Zipper);

        Assert.Equal(1.625m, chain.Quantity);
        Assert.Equal(
            "seat: 1 × 31 in of chain; other: 1 × 27 in of chain; 58 in in all, up to the next 1/8 yd: 1 5/8 yd",
            chain.Because.ToString()
        );
        Assert.Equal(31m / 27, chain.Uses[0].Amount / chain.Uses[1].Amount);
    }

    [Fact]
    public void A_zipper_too_short_for_the_foam_is_said()
    {
        // Sources.Practice: a firm block folded in half needs 22 / 2 + 4 = 15 in.
        OrderSpecification order = Order(
            Box with
            {
                Fill = new FillSpecification(FillKind.Foam, "foam", null, Length.Zero, 0.9m),
                Pointer = "/cushions/0",
            },
            Wide
        );

        Assert.DoesNotContain(
            Drafting.Of(order with { Stocks = [.. Closed("16")] }).Warnings,
            warning => warning.Code == "opening-too-small"
        );
        Assert.Contains(Drafting.Of(order with { Stocks = [.. Closed("14")] }).Warnings, warning => warning.Code == "opening-too-small");
    }

    [Theory]
    [InlineData("14 24", "The zipper of seat has room for 45 in; the nearest in stock, zip-24, is 24 in, 21 in too short.")]
    [InlineData("14 24 40", "The zipper of seat has room for 45 in; the nearest in stock, zip-40, is 40 in, 5 in too short.")]
    [InlineData("14 24 44", null)]
    [InlineData("14 24 48", null)]
    public void A_stock_length_too_short_for_the_opening_is_never_used_silently(string stocked, string? said)
    {
        // Sources.Practice: 40 × 20 × 3, a section of 40 + 2 × 3 in takes 45 at most; the next stock length below is within 2 in.
        OrderSpecification order = Order(Boxed(40, 20, 3, BackZipper, BoxingJoins.Back) with { Pointer = "/cushions/0" }, Wide) with
        {
            Stocks = [.. Closed(stocked)],
        };
        Violation? warning = Drafting.Of(order).Warnings.SingleOrDefault(one => one.Code == "zipper-too-short");
        string bought = Quote(order).Materials.Single(material => material.Kind == MaterialKind.Zipper).Because.ToString();

        Assert.Equal(said is null, warning is null);
        Assert.StartsWith(said ?? "", warning?.Detail.ToString() ?? "", StringComparison.Ordinal);
        Assert.Equal(said is not null, bought.Contains("shorter than the 45 in that fit", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("14", false, "chain", 1.375)]
    [InlineData("14", true, "chain", 1.375)]
    [InlineData("44", true, "zip-44", 1)]
    [InlineData("48", true, "zip-48", 1)]
    public void Chain_that_is_stocked_goes_before_a_closed_zipper_that_is_too_short(string stocked, bool first, string item, double bought)
    {
        // Sources.Practice: of what is stocked, what suits is taken. 40 × 20 × 3, a section of 46 in takes 45 at most; 14 would leave 31 in
        // sewn shut, and 46 + 1 in of chain, 1.31 yd, opens all of it. 44 suits, and 48 is shortened.
        StockSpecification[] zippers = [.. Closed(stocked)];
        OrderSpecification order = Order(Boxed(40, 20, 3, BackZipper, BoxingJoins.Back) with { Pointer = "/cushions/0" }, Wide) with
        {
            Stocks = first ? [Chain, .. zippers] : [.. zippers, Chain],
        };
        Material zipper = Quote(order).Materials.Single(material => material.Kind == MaterialKind.Zipper);

        Assert.Equal((item, (decimal)bought), (zipper.Item, (decimal)zipper.Quantity));
        Assert.DoesNotContain(Drafting.Of(order).Warnings, warning => warning.Code == "zipper-too-short");
    }

    [Theory]
    [InlineData(4, 0.5)]
    [InlineData(3, 0.75)]
    [InlineData(2.5, 0.625)]
    public void A_finished_lapped_section_is_as_high_as_the_boxing(double thickness, double lap)
    {
        // Sources.Practice: one half T/2 high, the other T/2 + lap; the lap lies double, so that the section measures T + 2s raw to raw.
        CushionSpecification box = Boxed(24, 22, (decimal)thickness, BackZipper with { Lap = In((decimal)lap) }, BoxingJoins.Back);
        Pattern pattern = Drafting.Of(Order(box, Wide)).Patterns[0];
        Panel upper = pattern.Panels.Single(panel => panel.Part.Kind == PartKind.ZipperUpper),
            lower = pattern.Panels.Single(panel => panel.Part.Kind == PartKind.ZipperLower),
            boxing = pattern.Panels.Single(panel => panel.Part.Kind == PartKind.Boxing);

        Assert.Equal(boxing.Height, upper.Height + lower.Height - In((decimal)lap));
        Assert.Equal(In((decimal)lap), upper.Height - lower.Height);
    }

    [Theory]
    [InlineData(0.75, "tape", false)]
    [InlineData(1.0, "hook-and-loop-tape", true)]
    public void Tape_comes_from_the_stock_of_its_width(double width, string item, bool warned)
    {
        StockSpecification tape = new()
        {
            Id = "tape",
            Kind = MaterialKind.HookAndLoopTape,
            Width = In((decimal)width),
            Sold = new UnitSale(SaleUnit.Yd, 0.25m, 1),
        };
        OrderSpecification order = Order(Boxed(22, 20, 3, HookAndLoop(0.5m, 1.25m)) with { Pointer = "/cushions/0" }) with
        {
            Stocks = [tape],
        };
        Material bought = Quote(order).Materials.Single(material => material.Kind == MaterialKind.HookAndLoopTape);

        // 22 in less 1 in is 21 in, up to the next 1/8 yd of the customary sale, or the least of 1 yd of the stock.
        Assert.Equal((item, warned ? 0.625m : 1m), (bought.Item, bought.Quantity));
        Assert.Equal(
            warned,
            Drafting.Of(order).Warnings.Any(warning => warning is { Code: "not-stocked", Pointer: "/cushions/0/closure/tapeWidth" })
        );
        Assert.Equal(
            !warned,
            bought.Because.ToString().EndsWith("up to the next 1/4 yd and the least that is sold: 1 yd", StringComparison.Ordinal)
        );
    }

    private static CushionSpecification Box => Boxed(24, 22, 4, BackZipper, BoxingJoins.Back);

    private static FabricSpecification Wide => Fabric with { Width = In(72) };

    private static StockSpecification[] Closed(string lengths) =>
        [
            .. lengths
                .Split(' ')
                .Select(length => new StockSpecification
                {
                    Id = $"zip-{length}",
                    Kind = MaterialKind.Zipper,
                    Length = In(int.Parse(length)),
                }),
        ];

    private static Material Bought(MaterialKind kind, StockSpecification[] stocks) =>
        Quote(Order(Box, Wide) with { Stocks = [.. stocks] }).Materials.Single(material => material.Kind == kind);
}
