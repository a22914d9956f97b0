using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Tests.Materials;

public sealed class FillingFacts
{
    [Fact]
    public void Foam_of_24_22_4_is_1_22222_cubic_feet_and_weighs_2_2_pounds()
    {
        // Sources.Mathematics: at 1.8 lb/ft³, 28.833 kg/m³.
        Volume foam = Filling.Foam(Boxed(24, 22, 4, HandSewn), Length.Zero);
        Mass mass = foam.At(28.8332m);

        Assert.Equal(1.22222, (double)foam.CubicFeet, 1e-5);
        Assert.Equal(2.2, (double)mass.Pounds, 1e-4);
        Assert.Equal(0.99790, (double)mass.Kilograms, 1e-5);
    }

    [Fact]
    public void Foam_of_60_55_10_centimetres_at_29_weighs_0_957_kilograms()
    {
        // Sources.Mathematics
        var foam = Filling.Foam(
            Boxed(1, 1, 1, HandSewn) with
            {
                Outline = new RectangleOutline(Mm(600), Mm(550)),
                Thickness = Mm(100),
            },
            Length.Zero
        );

        Assert.Equal(0.957m, foam.At(29).Kilograms);
    }

    [Fact]
    public void Oversize_is_added_in_width_and_depth_and_thickness_is_exact()
    {
        // Sources.Practice
        Assert.Equal(Volume.Of(In(24.5m), In(22.5m), In(4)), Filling.Foam(Boxed(24, 22, 4, HandSewn), In(0.5m)));
    }

    [Theory]
    [InlineData(18, 18, 1111.05, Sources.PaperBag)]
    [InlineData(12, 18, 587.44, Sources.PaperBag)]
    [InlineData(18, 12, 587.44, Sources.PaperBag)]
    [InlineData(20, 26, 2231.36, Sources.PaperBag)]
    public void A_sealed_bag_holds(int one, int other, double cubicInches, string source) =>
        Assert.Equal(cubicInches, (double)Filling.Bag(In(one), In(other)).CubicFeet * 1728, 0.01);

    [Fact]
    public void A_bag_a_metre_square_holds_0_19051_cubic_metres()
    {
        // Sources.PaperBag; the true maximum is proved to lie between 0.2055 and 0.217.
        double volume = (double)Filling.Bag(Mm(1000), Mm(1000)).CubicMillimetres / 1e9;

        Assert.Equal(0.190510, volume, 1e-6);
        Assert.True(volume < 0.217);
    }

    [Fact]
    public void A_box_has_the_room_of_its_block_and_a_pillow_that_of_its_bag()
    {
        Assert.Equal(Volume.Of(In(24), In(22), In(4)), Filling.Room(Boxed(24, 22, 4, HandSewn)));
        Assert.Equal(Filling.Bag(In(18), In(18)), Filling.Room(KnifeEdge(18, 18, HandSewn)));
    }

    [Theory]
    [InlineData(18)]
    [InlineData(24)]
    public void A_flat_round_bag_has_the_room_of_a_round_balloon(int diameter)
    {
        // W. Paulsen, What Is the Shape of a Mylar Balloon?, American Mathematical Monthly 101(10), 1994, from memory: 1.2185 r³.
        CushionSpecification round = KnifeEdge(diameter, diameter, HandSewn) with
        {
            Outline = new CircleOutline(In(diameter)),
        };
        double room = (double)Filling.Room(round).CubicFeet * 1728;

        Assert.Equal(1.0, room / (1.2185 * Math.Pow(diameter / 2.0, 3)), 0.02);
    }

    [Fact]
    public void A_weight_that_no_cover_would_hold_is_warned_of_and_bought_as_ordered()
    {
        // Sources.Practice: 18 × 18 holds 1111.05 in³, 0.018207 m³; overfilled by a fifth with feather at 52 × 4/3 kg/m³ that is
        // 1.514 kg. Pounds in place of kilograms are more than twice what is meant.
        CushionSpecification pillow = KnifeEdge(18, 18, HandSewn);
        Assert.Equal(1.5148, (double)Filling.Most(pillow, 52).Kilograms, 1e-4);

        Assert.Equal(["overfilled"], Codes(5000));
        Assert.Equal(["overfilled"], Codes(1515));
        Assert.Empty(Codes(1514));
        Assert.Empty(Codes(950));

        Quote quote = Quote(Order(Filled(5000)));
        Assert.Equal(11.03m, quote.Materials.Single(material => material.Kind == MaterialKind.LooseFill).Quantity);
        Assert.Equal(
            "11.02 lb of fill is more than seat holds; packed firm it takes 1.514 kg. A weight is given in kilograms: is 5 kg meant?",
            Drafting.Of(Order(Filled(5000))).Warnings.Single().Detail.ToString()
        );

        CushionSpecification Filled(decimal grams) =>
            pillow with
            {
                Fill = new FillSpecification(FillKind.Loose, "feather", 52, Length.Zero, 0.9m) { Weight = new Mass(grams) },
            };

        string[] Codes(decimal grams) => [.. Drafting.Of(Order(Filled(grams))).Warnings.Select(warning => warning.Code)];
    }
}
