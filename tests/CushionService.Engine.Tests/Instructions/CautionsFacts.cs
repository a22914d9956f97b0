using CushionService.Engine.Instructions;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Instructions;

public sealed class CautionsFacts
{
    private static readonly FillSpecification Foam = new(FillKind.Foam, "foam", null, Length.Zero, 0.9m);

    [Fact]
    public void Every_cushion_is_kept_from_infants() => Assert.Contains("infants", Codes(Order(KnifeEdge(18, 18, HandSewn))));

    [Theory]
    [InlineData("flammability")]
    [InlineData("foam")]
    public void Foam_can_burn(string code)
    {
        Assert.Contains(code, Codes(Order(Boxed(18, 18, 3, HandSewn) with { Fill = Foam })));
        Assert.DoesNotContain(code, Codes(Order(Boxed(18, 18, 3, HandSewn))));
    }

    [Fact]
    public void A_loose_fill_can_burn_too_but_needs_no_blade_for_foam()
    {
        string[] codes = Codes(Order(KnifeEdge(18, 18, HandSewn) with { Fill = Foam with { Kind = FillKind.Loose } }));

        Assert.Contains("flammability", codes);
        Assert.DoesNotContain("foam", codes);
    }

    [Fact]
    public void A_zipper_has_small_parts()
    {
        Assert.Contains("small-parts", Codes(Order(KnifeEdge(18, 18, BackZipper))));
        Assert.DoesNotContain("small-parts", Codes(Order(KnifeEdge(18, 18, HandSewn))));
    }

    [Fact]
    public void A_handle_is_not_rated_for_a_load() =>
        Assert.Contains("handle-load", Codes(Order(Boxed(18, 18, 3, HandSewn) with { Handle = Strap })));

    [Fact]
    public void Cords_round_the_ends_of_a_roll_can_strangle()
    {
        Assert.Contains(
            "ties-and-cords",
            Codes(Order(BolsterStepFacts.Roll with { Ends = new BolsterEnds(BolsterEndKind.Tied, In(6), In(0.75m)) }))
        );
        Assert.DoesNotContain("ties-and-cords", Codes(Order(BolsterStepFacts.Roll)));
    }

    [Fact]
    public void Plain_cutting_still_has_blades_and_irons() =>
        Assert.Equal(["blades-and-irons", "local-codes"], Codes(Order(Fabric, Piece("runner", 1, 12, 40))));

    [Fact]
    public void Local_codes_and_licensed_practice_end_every_list()
    {
        Assert.Equal("local-codes", Codes(Order(Boxed(18, 18, 3, HandSewn) with { Handle = Strap }))[^1]);
        Assert.Equal("local-codes", Codes(Order(Fabric, Piece("runner", 1, 12, 40)))[^1]);
    }

    private static string[] Codes(OrderSpecification order) => [.. Cautions.For(order).Select(caution => caution.Code)];
}
