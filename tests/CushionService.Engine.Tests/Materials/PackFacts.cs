using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Materials;

/// <summary>What comes in packs is cut whole from them.</summary>
public sealed class PackFacts
{
    // Sources.Derived: the least number of packs, by hand.
    [Theory]
    [InlineData(36, 3, "23 23 23")]
    [InlineData(46, 2, "23 23 23")]
    [InlineData(10, 2, "7 3 6 4")]
    [InlineData(10, 3, "6 6 6 4 4 4")]
    [InlineData(10, 3, "5 5 4 4 3 3 3 2")]
    [InlineData(12, 1, "12")]
    [InlineData(12, 0, "")]
    public void Lengths_are_cut_whole_from_the_fewest_packs(int content, int packs, string lengths)
    {
        (Length, int)[] each =
        [
            .. lengths
                .Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .GroupBy(one => one)
                .Select(one => (In(int.Parse(one.Key)), one.Count())),
        ];

        Assert.Equal(packs, Packs.For(In(content), each));
    }

    [Fact]
    public void Many_lengths_take_as_many_packs_as_one_by_one()
    {
        // The same rule, each length by itself.
        var random = new Random(5);
        for (var trial = 0; trial < 300; trial++)
        {
            int content = random.Next(10, 40);
            (int Each, int Count)[] lengths =
            [
                .. Enumerable.Range(0, random.Next(1, 6)).Select(_ => (random.Next(1, content + 1), random.Next(1, 30))),
            ];
            List<int> rests = [];
            foreach (int each in lengths.SelectMany(one => Enumerable.Repeat(one.Each, one.Count)).OrderDescending())
            {
                int first = rests.FindIndex(rest => rest >= each);
                if (first < 0)
                {
                    rests.Add(content - each);
                }
                else
                {
                    rests[first] -= each;
                }
            }

            Assert.Equal(rests.Count, Packs.For(In(content), lengths.Select(one => (In(one.Each), one.Count))));
        }
    }

    public static TheoryData<MaterialKind, int, int> Bought =>
        new()
        {
            // A section of 24 in less 1/2 in at each end: 23 in, one from 36.
            { MaterialKind.HookAndLoopTape, 36, 3 },
            { MaterialKind.HookAndLoopTape, 46, 2 },
            // 12 in and 1/2 in turned under at each end: 13 in, two from 36.
            { MaterialKind.Webbing, 36, 2 },
            { MaterialKind.Webbing, 13, 3 },
            // 2 × 4 + 12 = 20 in, one from 30; four tufts on each of three cushions.
            { MaterialKind.Twine, 30, 12 },
            { MaterialKind.Twine, 40, 6 },
        };

    [Theory]
    [MemberData(nameof(Bought))]
    public void No_length_is_joined_from_two_packs(MaterialKind kind, int content, int packs)
    {
        // Sources.Practice.
        Material bought = Quote(Order(Three(kind)) with { Stocks = [Pack(kind, content)] }).Materials.Single(one => one.Kind == kind);

        Assert.Equal(("pack", (decimal)packs), (bought.Item, bought.Quantity));
        Assert.Contains("no length is joined from two, at ", bought.Because.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(MaterialKind.HookAndLoopTape, 20, "20 in", "23 in")]
    [InlineData(MaterialKind.Webbing, 12, "12 in", "13 in")]
    [InlineData(MaterialKind.Twine, 18, "18 in", "20 in")]
    public void Packs_that_are_shorter_than_a_length_are_passed_over_and_it_is_told(
        MaterialKind kind,
        int content,
        string has,
        string asked
    )
    {
        OrderSpecification order = Order(Three(kind)) with { Stocks = [Pack(kind, content)] };
        Violation told = Assert.Single(Drafting.Of(order).Warnings, warning => warning.Code == "not-stocked");

        Assert.Equal(
            $"pack has {has} in each, and {asked} are needed in one length; it is listed without a stock.",
            told.Detail.ToString()
        );
        Assert.NotEqual("pack", Quote(order).Materials.Single(one => one.Kind == kind).Item);
    }

    [Theory]
    [InlineData(60, 45, 5)] // Off a roll 45 in wide, 260 in would be 4 1/3 of 60.
    [InlineData(60, 56, 3)] // Two side by side.
    [InlineData(30, 24, 15)] // Three parts of 28 × 17 1/3 each, none beside another.
    public void Batting_of_which_no_piece_lies_across_two_packs(int length, int width, int packs)
    {
        // Sources.Derived: five wraps of 24 + 4 by 2 × 22 + 2 × 4 in.
        CushionSpecification cushion = Boxed(24, 22, 4, HandSewn) with
        {
            Quantity = 5,
            Fill = new FillSpecification(FillKind.Foam, "foam", null, Length.Zero, 1)
            {
                Wrap = new WrapSpecification("pack", WrapSides.FourSides, 1),
            },
        };
        Material batting = Quote(Order(cushion) with { Stocks = [Pack(MaterialKind.Batting, length) with { Width = In(width) }] })
            .Materials.Single(one => one.Kind == MaterialKind.Batting);

        Assert.Equal(packs, batting.Quantity);
        Assert.Contains($"no piece across two of {width} in × {length} in", batting.Because.ToString(), StringComparison.Ordinal);
    }

    private static StockSpecification Pack(MaterialKind kind, int length) =>
        new()
        {
            Id = "pack",
            Kind = kind,
            Length = In(length),
            Sold = new UnitSale(SaleUnit.Each, 1, 0),
        };

    private static CushionSpecification Three(MaterialKind kind)
    {
        CushionSpecification box = Boxed(24, 22, 4, HandSewn) with { Quantity = 3 };
        return kind switch
        {
            MaterialKind.HookAndLoopTape => box with
            {
                Closure = new HookAndLoopClosure(Side.Back, Length.Zero, In(0.5m), In(1), In(0.75m)),
            },
            MaterialKind.Webbing => box with { Handle = new HandleSpecification(HandleKind.Webbing, Side.Left, In(1), In(12), In(11)) },
            _ => box with
            {
                Trim = new TrimSpecification { Tufts = new TuftSpecification(2, 2, TuftGrid.Square, In(0.875m), false, In(0)) },
            },
        };
    }
}
