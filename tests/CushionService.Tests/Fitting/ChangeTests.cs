using System.Text;
using System.Text.Json.Nodes;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Desk;
using CushionService.Engine.Quoting;
using CushionService.Json;

namespace CushionService.Tests.Fitting;

/// <summary>What is named as a help helps when it is ordered, and takes what was said.</summary>
public sealed class ChangeTests
{
    private const string Bench = """
        { "units": "in", "currency": "USD", "effort": "quick",
          "cushions": [ { "id": "bench", "construction": "boxed", "outline": { "kind": "rectangle", "width": 40, "depth": 18 },
            "thickness": 3, "closure": { "kind": "zipper" }, "edging": { "kind": "welt", "cut": "bias" } } ],
          "fabrics": [ { "id": "canvas", "width": 54, "sold": { "unit": "yd", "step": "1/8" }, "price": { "amount": "20.00", "per": "yd" },
            "onHand": [ { "width": 54, "length": 60 } ] } ] }
        """;

    [Fact]
    public void Straight_welt_makes_the_fabric_enough_and_what_is_missing_is_priced()
    {
        FitAnswer fit = Fit(JsonNode.Parse(Bench)!);

        Assert.False(fit.Fits);
        MissingAnswer missing = Assert.Single(fit.Missing);
        // The price of whole eighths of a yard at 20.00.
        Assert.Equal((decimal)missing.SoldLength * 20, decimal.Parse(missing.Amount!));
        Assert.True(missing.SoldLength * 36 >= missing.Length);
        Assert.Contains(fit.Changes, change => change is { Change: FabricChange.StraightWelt, Fits: true, Missing.Count: 0 });
        JsonNode straight = JsonNode.Parse(Bench)!;
        straight["cushions"]![0]!["edging"]!["cut"] = "crosswise";
        Assert.True(Fit(straight).Fits);
        Assert.Empty(Fit(straight).Changes);
    }

    [Fact]
    public void An_underside_of_another_fabric_is_bought_for_what_it_takes()
    {
        ChangeAnswer change = Fit(JsonNode.Parse(Bench)!).Changes.Single(change => change.Change == FabricChange.PlainUnderside);

        // One face of 41 × 19 on fabric 54 wide: 19 in, 5/8 yd.
        MissingAnswer bought = Assert.Single(change.Missing);
        Assert.Equal((19, 0.625), (bought.Length, bought.SoldLength));
    }

    [Fact]
    public void A_refusal_of_a_face_that_is_too_wide_names_what_joins_take()
    {
        JsonNode wide = JsonNode.Parse(Bench)!;
        wide["cushions"]![0]!["outline"]!["width"] = 70;
        wide["cushions"]![0]!.AsObject().Remove("edging");
        wide["fabrics"]![0]!.AsObject().Remove("onHand");
        Refusal refusal = Handle(wide, Purposes.Quote).Refusal!;
        string detail = refusal.Violations[0].Detail.ToString();
        wide["cushions"]![0]!["faceJoins"] = "allow";
        YardageLine joined = Handle(wide, Purposes.Yardage).Answer!.Yardage.Single();

        Assert.Equal("wider-than-fabric", refusal.Violations[0].Code);
        Assert.Contains("joins in its faces", detail, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"for {20 * joined.SoldLength:0.00} USD"), detail, StringComparison.Ordinal);
    }

    // A face of 61 on fabric 54 wide cannot be bought for; joined it can, though there are more pieces that find no place then.
    [Fact]
    public void Joins_help_a_face_that_is_wider_than_the_fabric_on_hand()
    {
        JsonNode wide = JsonNode.Parse(Bench)!;
        wide["cushions"]![0]!["outline"]!["width"] = 60;
        wide["fabrics"]![0]!["onHand"]![0]!["length"] = 30;
        FitAnswer fit = Fit(wide);

        Assert.Empty(fit.Missing);
        Assert.Empty(fit.SecondLots);
        ChangeAnswer joins = fit.Changes.Single(change => change.Change == FabricChange.AllowJoins);
        Assert.False(joins.Fits);
        wide["cushions"]![0]!["faceJoins"] = "allow";
        Assert.Equal(Assert.Single(Fit(wide).Missing).SoldLength, Assert.Single(joins.Missing).SoldLength);
    }

    private static FitAnswer Fit(JsonNode order) => Handle(order, Purposes.Fit).Answer!;

    private static Outcome<T> Handle<T>(JsonNode order, Purpose<T> purpose)
        where T : class =>
        new OrderDesk().Handle(OrderText.Parse(Encoding.UTF8.GetBytes(order.ToJsonString())), purpose, CancellationToken.None);
}
