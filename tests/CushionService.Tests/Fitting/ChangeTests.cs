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

    // Sources.Derived: each copy is laid or missing, and what is bought is at least as large as the pieces that are missing.
    [Theory]
    [InlineData("c0 35 35 1, c1 62.5 30 3, c2 65 45 1", 82.5, 137.5)]
    [InlineData("c0 40 40 4, c1 55 25 2", 120, 60)]
    [InlineData("c0 60 40 3, c1 45 45 2, c2 30 30 5", 90, 110)]
    [InlineData("c0 50 50 6", 100, 130)]
    public void What_is_missing_holds_what_has_no_place(string cushions, double width, double length)
    {
        JsonNode order = JsonNode.Parse(
            $$"""
            { "units": "cm", "currency": "EUR", "effort": "quick", "fabrics": [ { "id": "main", "width": 135,
              "shrinkage": { "length": 0, "width": 0 }, "sold": { "unit": "m", "step": 0.1 },
              "onHand": [ { "width": {{FormattableString.Invariant($"{width}")}}, "length": {{FormattableString.Invariant(
                $"{length}"
            )}} } ] } ] }
            """
        )!;
        order["cushions"] = new JsonArray([
            .. cushions
                .Split(", ")
                .Select(one => one.Split(' '))
                .Select(one =>
                    JsonNode.Parse(
                        $$"""
                        { "id": "{{one[0]}}", "construction": "knife-edge", "closure": { "kind": "hand-sewn" }, "quantity": {{one[3]}},
                          "outline": { "kind": "rectangle", "width": {{one[1]}}, "depth": {{one[2]}} } }
                        """
                    )
                ),
        ]);
        FitAnswer fit = Fit(order);
        FabricFitAnswer fabric = fit.Fabrics.Single();
        MissingAnswer missing = Assert.Single(fit.Missing);

        Assert.All(
            fit.Pieces,
            piece =>
                Assert.Equal(
                    piece.Quantity,
                    fabric.Offcuts.Sum(offcut => offcut.Placements.Count(laid => laid.Piece == piece.Id))
                        + fabric.Unplaced.Where(rest => rest.Piece == piece.Id).Sum(rest => rest.Copies)
                )
        );
        double area = fabric.Unplaced.Sum(rest =>
            rest.Copies * fit.Pieces.Where(piece => piece.Id == rest.Piece).Sum(piece => piece.Width * piece.Length)
        );
        Assert.True(missing.Length * 135 >= area, $"{missing.Length} × 135 for {area}");
        Assert.All(fit.SecondLots, lot => Assert.True(missing.SoldLength <= lot.SoldLength));
    }

    // Sources.Derived: a face cut 22 wide finds its middle on a motif of 12 in wherever the first is on 54 in, but on 30 in only where
    // one is from 11 to 19 in.
    [Theory]
    [InlineData(54, true)]
    [InlineData(30, false)]
    public void A_face_that_finds_its_motif_on_the_widest_offcut_alone_is_told(int width, bool matched)
    {
        FitAnswer fit = Fit(
            JsonNode.Parse(
                $$"""
                { "units": "in", "currency": "USD", "cushions": [ { "id": "k", "construction": "knife-edge",
                  "outline": { "kind": "rectangle", "width": 21, "depth": 21 }, "closure": { "kind": "zipper", "side": "back" } } ],
                  "fabrics": [ { "id": "main", "width": 54, "shrinkage": { "length": 0, "width": 0 },
                    "sold": { "unit": "yd", "step": "1/8" },
                    "repeat": { "length": 12, "width": 12, "motif": { "x": 6, "y": 6 } },
                    "onHand": [ { "width": 54, "length": 4 }, { "width": {{width}}, "length": 70 } ] } ] }
                """
            )!
        );

        Assert.True(fit.Fits);
        Assert.Equal(matched, fit.Warnings.All(warning => warning.Code != "not-matched"));
    }

    private static FitAnswer Fit(JsonNode order) => Handle(order, Purposes.Fit).Answer!;

    private static Outcome<T> Handle<T>(JsonNode order, Purpose<T> purpose)
        where T : class =>
        new OrderDesk().Handle(OrderText.Parse(Encoding.UTF8.GetBytes(order.ToJsonString())), purpose, CancellationToken.None);
}
