using System.Collections.Immutable;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Tests.Materials;

public sealed class BillOfMaterialsFacts
{
    private static readonly FillSpecification Foam = new(FillKind.Foam, "foam-4", 28.8332m, Length.Zero, 0.9m);
    private static readonly Currency Dollars = new("USD");

    [Fact]
    public void A_zippered_foam_box_takes_fabric_foam_chain_and_thread()
    {
        OrderSpecification order = Order(
            Boxed(24, 22, 4, BackZipper, BoxingJoins.Back) with
            {
                Fill = Foam,
            },
            Fabric with
            {
                Width = In(72),
            }
        );

        Assert.Equal(
            ["main Fabric Yd", "foam-4 Foam Each 1", "zipper Zipper Each 1", "thread Thread Yd 21"],
            Quote(order)
                .Materials.Select(material =>
                    material.Kind == MaterialKind.Fabric
                        ? $"{material.Item} {material.Kind} {material.Unit}"
                        : $"{material.Item} {material.Kind} {material.Unit} {material.Quantity}"
                )
        );
    }

    [Theory]
    [InlineData(12, null)]
    [InlineData(13, "seat 3: ")]
    [InlineData(100, "seat 3: ")]
    public void A_line_of_many_cushions_names_the_first_three(int cushions, string? last)
    {
        OrderSpecification one = Order(KnifeEdge(18, 18, BackZipper));
        OrderSpecification order = one with
        {
            Cushions = [.. Enumerable.Range(1, cushions).Select(i => one.Cushions[0] with { Id = $"seat-{i}", Label = $"seat {i}" })],
        };
        string because = Quote(order).Materials.Single(material => material.Kind == MaterialKind.Thread).Because.ToString();

        Assert.Equal(last is null ? cushions : 3, because.Split("seat ").Length - 1);
        Assert.Equal(last is not null, because.Contains($"; {cushions - 3} more cushions;", StringComparison.Ordinal));
        Assert.Contains(last ?? "seat 12: ", because, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(SaleUnit.Lb, 2.2, Sources.Mathematics)]
    [InlineData(SaleUnit.Kg, 1, Sources.Mathematics)]
    [InlineData(SaleUnit.Each, 1, Sources.Practice)]
    public void Foam_is_bought_by_the_unit_of_its_price(SaleUnit unit, double quantity, string source)
    {
        Material foam = Bill(Boxed(24, 22, 4, HandSewn) with { Fill = Foam }, "foam-4", unit)
            .Single(material => material.Kind == MaterialKind.Foam);

        Assert.Equal((unit, (decimal)quantity), (foam.Unit, foam.Quantity));
    }

    [Theory]
    [InlineData(2, 2, 4.4)]
    [InlineData(10, 10, 22)]
    public void Equal_cushions_take_as_many_blocks_and_as_much_weight(int cushions, int blocks, double pounds)
    {
        CushionSpecification box = Boxed(24, 22, 4, HandSewn) with { Fill = Foam, Quantity = cushions };

        Assert.Equal(blocks, Bill(box, "foam-4", SaleUnit.Each).Single(material => material.Kind == MaterialKind.Foam).Quantity);
        Assert.Equal((decimal)pounds, Bill(box, "foam-4", SaleUnit.Lb).Single(material => material.Kind == MaterialKind.Foam).Quantity);
    }

    [Theory]
    [InlineData(SaleUnit.Yd, "0.875")]
    [InlineData(SaleUnit.M, "0.8")]
    [InlineData(SaleUnit.Each, "1")]
    public void A_zipper_in_a_section_runs_from_raw_edge_to_raw_edge(SaleUnit unit, string quantity)
    {
        // Sources.Practice: a section of 30 in is cut 31; 31 in is sold as 7/8 yd or 0.8 m.
        Material zipper = Bill(Boxed(24, 22, 4, BackZipper, BoxingJoins.Back), "zipper", unit)
            .Single(material => material.Kind == MaterialKind.Zipper);

        Assert.Equal(decimal.Parse(quantity), zipper.Quantity);
        Assert.StartsWith("seat: 1 × 31 in of chain", zipper.Because.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_zipper_in_a_side_seam_is_2_1_2_shorter_than_the_side()
    {
        // Sources.Practice
        Assert.Equal(
            "seat: 1 × 15 1/2 in of chain",
            Quote(Order(KnifeEdge(18, 18, BackZipper)))
                .Materials.Single(material => material.Kind == MaterialKind.Zipper)
                .Because.ToString()
        );
    }

    [Fact]
    public void Tape_is_the_section_less_half_an_inch_at_each_end()
    {
        // Sources.Practice: 17 in less 1 in is 16 in, sold as 1/2 yd.
        Material tape = Quote(Order(Boxed(17, 15, 2, HookAndLoop(0.5m, 1))))
            .Materials.Single(material => material.Kind == MaterialKind.HookAndLoopTape);

        Assert.Equal((0.5m, SaleUnit.Yd), (tape.Quantity, tape.Unit));
        Assert.Contains("16 in of hook and as much loop", tape.Because.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Loose_fill_is_bought_by_weight()
    {
        // Sources.PaperBag for the room: 0.64297 ft³ × 0.9 at 20 kg/m³ is 0.7225 lb.
        FillSpecification fibre = new(FillKind.Loose, "polyester-fibre", 20, Length.Zero, 0.9m);
        Material fill = Quote(Order(KnifeEdge(18, 18, HandSewn) with { Fill = fibre }))
            .Materials.Single(material => material.Kind == MaterialKind.LooseFill);

        Assert.Equal((0.73m, SaleUnit.Lb), (fill.Quantity, fill.Unit));
    }

    [Fact]
    public void An_order_of_loose_pieces_takes_fabric_alone() =>
        Assert.Equal(MaterialKind.Fabric, Assert.Single(Quote(Order(Fabric, Piece("runner", 2, 12, 40))).Materials).Kind);

    private static ImmutableArray<Material> Bill(CushionSpecification cushion, string priced, SaleUnit per) =>
        Quote(
            Order(cushion) with
            {
                Currency = Dollars,
                Prices = ImmutableDictionary<string, ItemPriceSpecification>.Empty.Add(
                    priced,
                    new ItemPriceSpecification(new Money(1, Dollars), per)
                ),
            }
        ).Materials;
}
