using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Tests.Materials;

/// <summary>Ready-made forms: which one goes into which cover.</summary>
public sealed class FormFacts
{
    // Sources.Practice: the sizes that shops usually have.
    private static readonly StockSpecification[] Shop =
    [
        .. new[] { 12, 14, 16, 18, 20, 22, 24, 26 }.Select(side => Form($"{side}", In(side), In(side))),
        .. new[] { (12, 16), (12, 20), (14, 20), (14, 24), (14, 36) }.Select(size =>
            Form($"{size.Item1}x{size.Item2}", In(size.Item1), In(size.Item2))
        ),
        new()
        {
            Id = "round-16",
            Kind = MaterialKind.Form,
            Diameter = In(16),
        },
        new()
        {
            Id = "roll",
            Kind = MaterialKind.Form,
            Diameter = In(7),
            Length = In(20),
        },
    ];

    [Theory]
    [InlineData(18, 18, Fullness.Medium, "20", true, Sources.Practice)]
    [InlineData(17, 17, Fullness.Medium, "18", true, Sources.Practice)]
    [InlineData(18, 18, Fullness.Plump, "20", true, Sources.Practice)]
    [InlineData(13, 13, Fullness.Soft, "14", true, Sources.Practice)]
    [InlineData(11, 11, Fullness.Plump, "12", true, Sources.Practice)]
    [InlineData(11, 18, Fullness.Medium, "12x20", true, Sources.Practice)]
    [InlineData(18, 11, Fullness.Medium, "12x20", true, Sources.Practice)]
    [InlineData(12, 22, Fullness.Medium, "14x24", true, Sources.Practice)]
    [InlineData(13, 35, Fullness.Medium, "14x36", true, Sources.Practice)]
    [InlineData(19, 19, Fullness.Medium, "20", true, Sources.Practice)]
    public void A_form_is_1_to_2_inches_larger_than_its_cover(
        int width,
        int depth,
        Fullness fullness,
        string form,
        bool fits,
        string source
    )
    {
        var chosen = PillowForm.For(Pillow(width, depth, fullness), Shop);

        Assert.Equal((form, fits), (chosen.Stock!.Id, chosen.Fits));
    }

    // Sources.Practice: the largest form is 26 in, the longest 14 by 36; a cover of 20 by 40 would be half empty, one of 6 burst.
    [Theory]
    [InlineData(30, 30)]
    [InlineData(20, 40)]
    [InlineData(6, 6)]
    public void Where_no_form_fills_its_cover_one_is_made_to_size(int width, int depth)
    {
        OrderSpecification order = Order(Pillow(width, depth, Fullness.Medium)) with { Stocks = [.. Shop] };

        Assert.Null(PillowForm.For(order.Cushions[0], Shop).Stock);
        Assert.Equal(["not-stocked"], StockFaults.Warnings(order).Select(fault => fault.Code));
    }

    [Theory]
    [InlineData("round-16", false, "Form round-16 is round, and the cover of seat has corners that it leaves empty.")]
    [InlineData("16", true, "Form 16 has corners, and the cover of seat is round.")]
    public void A_form_of_another_shape_than_its_cover_is_named_with_a_warning(string form, bool round, string says)
    {
        CushionSpecification pillow = Pillow(15, 15, Fullness.Medium);
        pillow = pillow with
        {
            Outline = round ? new CircleOutline(In(15)) : pillow.Outline,
            Fill = pillow.Fill! with { Form = new FormSpecification(form, null, null, null) },
        };
        Violation fault = StockFaults.Warnings(Order(pillow) with { Stocks = [.. Shop] }).Single();

        Assert.Equal("form-size", fault.Code);
        Assert.StartsWith(says, fault.Detail.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(450, "500", true)]
    [InlineData(400, "450", true)]
    [InlineData(380, "400", true)]
    [InlineData(280, "300", true)]
    [InlineData(600, "600", false)]
    public void A_metric_form_is_2_to_5_centimetres_larger(int side, string form, bool fits)
    {
        // Sources.Practice: 30 to 60 cm by 5 or 10.
        StockSpecification[] shop = [.. new[] { 300, 350, 400, 450, 500, 600 }.Select(size => Form($"{size}", Mm(size), Mm(size)))];
        CushionSpecification pillow = Pillow(1, 1, Fullness.Medium) with
        {
            Outline = new RectangleOutline(Mm(side), Mm(side)),
            Practice = WorkroomPractice.Metric,
        };
        var chosen = PillowForm.For(pillow, shop);

        Assert.Equal((form, fits), (chosen.Stock!.Id, chosen.Fits));
    }

    [Theory]
    [InlineData(Fullness.Soft, 19)]
    [InlineData(Fullness.Medium, 19)]
    [InlineData(Fullness.Plump, 20)]
    public void Without_stock_one_is_bought_by_the_rule(Fullness fullness, int side)
    {
        // Sources.Practice
        var form = PillowForm.For(Pillow(18, 18, fullness), []);

        Assert.Equal((null, In(side), In(side), true), (form.Stock, form.Width, form.Depth, form.Fits));
    }

    [Fact]
    public void Circles_and_rolls_take_forms_of_their_own_shape()
    {
        CushionSpecification pillow = Pillow(15, 15, Fullness.Medium),
            round = pillow with { Outline = new CircleOutline(In(15)) },
            roll = pillow with { Construction = Construction.Bolster, Outline = new CircleOutline(In(6)), Length = In(18) };

        Assert.Equal("round-16", PillowForm.For(round, Shop).Stock!.Id);
        Assert.Equal("16", PillowForm.For(pillow, Shop).Stock!.Id);
        Assert.Equal("roll", PillowForm.For(roll, Shop).Stock!.Id);
    }

    [Fact]
    public void The_bill_names_the_form_and_the_cover_that_it_is_for()
    {
        OrderSpecification order = Order(Pillow(18, 18, Fullness.Medium) with { Quantity = 4 }) with { Stocks = [.. Shop] };
        Material bought = Quote(order).Materials.Single(material => material.Kind == MaterialKind.Form);

        Assert.Equal(("20", 4, SaleUnit.Each), (bought.Item, bought.Quantity, bought.Unit));
        Assert.Equal(new MaterialSize(In(20), In(20), null), bought.Size);
        Assert.Equal("seat: 4 × form of 20 in × 20 in in a cover of 18 in × 18 in", bought.Because.ToString());
    }

    [Theory]
    [InlineData(Fullness.Soft, 0.8, Sources.PaperBag)]
    [InlineData(Fullness.Medium, 0.9, Sources.PaperBag)]
    [InlineData(Fullness.Plump, 1, Sources.PaperBag)]
    public void A_fullness_is_a_share_of_what_the_bag_holds(Fullness fullness, double share, string source)
    {
        // 18 × 18 in holds 1 111.05 in³, 0.018207 m³; of fibre at 20 kg/m³ that is 0.36414 kg.
        CushionSpecification pillow = KnifeEdge(18, 18, HandSewn) with
        {
            Fill = new FillSpecification(FillKind.Loose, "fibre", 20, Length.Zero, FillPractice.Plumpness(fullness)),
        };
        Material fibre = Quote(Order(pillow)).Materials.Single(material => material.Kind == MaterialKind.LooseFill);

        Assert.Equal(share * 0.36414, (double)fibre.Weight!.Value.Kilograms, 1e-4);
    }

    [Fact]
    public void A_weight_that_is_ordered_is_bought()
    {
        CushionSpecification pillow = KnifeEdge(18, 18, HandSewn) with
        {
            Quantity = 3,
            Fill = new FillSpecification(FillKind.Loose, "fibre", 20, Length.Zero, 1) { Weight = new Mass(453.59237m) },
        };

        Assert.Equal(3, Quote(Order(pillow)).Materials.Single(material => material.Kind == MaterialKind.LooseFill).Quantity);
    }

    private static StockSpecification Form(string id, Length width, Length depth) =>
        new()
        {
            Id = id,
            Kind = MaterialKind.Form,
            Width = width,
            Depth = depth,
        };

    private static CushionSpecification Pillow(int width, int depth, Fullness fullness) =>
        KnifeEdge(width, depth, new ZipperClosure(Side.Back, Length.Zero, In(0.75m))) with
        {
            Fill = new FillSpecification(FillKind.Form, "form", null, Length.Zero, 1)
            {
                Fullness = fullness,
                Form = new FormSpecification(null, null, null, null),
            },
        };
}
