using System.Text;
using System.Text.Json.Nodes;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Engine.Fitting;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Intake;
using CushionService.Json;
using CushionService.Nesting;
using CushionService.Tests.Hosting;
using CushionService.Tests.Orders;

namespace CushionService.Tests.Fitting;

/// <summary>Whether fabric on hand is enough, and for how much.</summary>
public sealed class FitTests(RunningService service) : IClassFixture<RunningService>
{
    private const int Count = 150;

    // One step more is held against a layout of the same pieces on the bolt, thoroughly searched: it must be longer than the offcut.
    [Fact]
    public void The_largest_cushion_stands_right_at_the_boundary()
    {
        int found = 0,
            impossible = 0;
        for (int number = 0; number < Count; number++)
        {
            Order order = OrderText.Parse(Encoding.UTF8.GetBytes(WhatIfOrders.OnHand(number, 1).ToJsonString())).Order!;
            (FreeSize Free, SizedCushion Sizes)[] ways = [.. SizedCushion.Ways(order, Taken(order).Specification!, 0)];
            SizedCushion sizes = ways[number % ways.Length].Sizes;
            if (
                LargestStep.Find(
                    sizes.Steps,
                    steps => Verdict(sizes.At(steps), Effort.Quick) == FitVerdict.Fits,
                    steps => Verdict(sizes.At(steps), Effort.Thorough)
                )
                is not var (largest, next)
            )
            {
                continue;
            }

            found++;
            impossible += next == FitVerdict.Impossible ? 1 : 0;
            Assert.NotEqual(FitVerdict.Fits, next);
            Assert.True(Verdict(sizes.At(largest), Effort.Thorough) == FitVerdict.Fits, $"Order {number}: {largest} steps");
            Assert.True(Verdict(sizes.At(largest - 1), Effort.Thorough) == FitVerdict.Fits, $"Order {number}: {largest - 1} steps");
            Assert.False(LiesOnOffcut(sizes.At(largest + 1)), $"Order {number}: {largest + 1} steps");
        }

        Assert.InRange(found, Count * 3 / 4, Count);
        Assert.True(impossible > found / 2, $"A bound decided only {impossible} of {found}.");
    }

    [Theory]
    [InlineData("", "The place of the first motif of main is not given, so a layout fits wherever it is, and 20 in of each offcut")]
    [InlineData(
        """, "motif": { "x": 10, "y": 5 }""",
        "Where the motif of main lies along an offcut is not known, so a layout fits wherever it is, and 20 in of each offcut"
    )]
    public async Task A_fit_on_a_repeat_says_that_the_motif_is_unknown_and_names_the_lot(string motif, string said)
    {
        using HttpResponseMessage response = await service.PostAsync(
            "fits",
            $$"""
            { "units": "in", "effort": "quick",
              "cushions": [{ "id": "a", "construction": "knife-edge", "outline": { "kind": "rectangle", "width": 18, "depth": 18 },
                             "closure": { "kind": "hand-sewn" } }],
              "fabrics": [{ "id": "main", "width": 54, "lot": "7A", "repeat": { "length": 20, "width": 20{{motif}} },
                            "sold": { "unit": "yd", "step": "1/8" },
                            "onHand": [{ "width": 54, "length": 80 }, { "width": 54, "length": 40, "lot": "9" }] }] }
            """
        );
        JsonObject answer = await response.JsonAsync();

        JsonNode warning = Assert.Single(answer["warnings"]!.AsArray())!;
        Assert.Equal("motif-unknown", (string)warning["code"]!);
        Assert.StartsWith(said, (string)warning["detail"]!, StringComparison.Ordinal);
        Assert.Equal(["7A", "9"], answer["fabrics"]![0]!["offcuts"]!.AsArray().Select(offcut => $"{offcut!["lot"]}"));
    }

    [Theory]
    [InlineData("free", true)]
    [InlineData("centred", false)]
    public async Task A_repeat_is_kept_only_where_something_is_matched(string faces, bool fits)
    {
        // Two faces of 19 in side by side on 54 in; 36 in less a repeat of 18 leave 18, and nobody can say that 36 are too few.
        using HttpResponseMessage response = await service.PostAsync(
            "fits",
            $$"""
            { "units": "in", "effort": "quick",
              "cushions": [{ "id": "a", "construction": "knife-edge", "outline": { "kind": "rectangle", "width": 18, "depth": 18 },
                             "closure": { "kind": "hand-sewn" }, "match": { "faces": "{{faces}}", "underside": "free" } }],
              "fabrics": [{ "id": "main", "width": 54, "repeat": { "length": 18 }, "sold": { "unit": "yd", "step": "1/8" },
                            "onHand": [{ "width": 50, "length": 36 }] }] }
            """
        );
        JsonObject answer = await response.JsonAsync();

        Assert.Equal((fits, fits ? "fits" : "not-found"), ((bool)answer["fits"]!, (string)answer["fabrics"]![0]!["verdict"]!));
    }

    [Fact]
    public async Task What_is_kept_to_find_the_motif_is_no_more_than_there_is()
    {
        // A face of 19 in on an offcut of 15 in, whatever the repeat of 20 in: that is shown, and not only not found.
        using HttpResponseMessage response = await service.PostAsync(
            "fits",
            """
            { "units": "in", "effort": "quick",
              "cushions": [{ "id": "a", "construction": "knife-edge", "outline": { "kind": "rectangle", "width": 18, "depth": 18 },
                             "closure": { "kind": "hand-sewn" } }],
              "fabrics": [{ "id": "main", "width": 54, "repeat": { "length": 20 }, "sold": { "unit": "yd", "step": "1/8" },
                            "onHand": [{ "width": 54, "length": 15 }] }] }
            """
        );

        Assert.Equal("impossible", (string)(await response.JsonAsync())["fabrics"]![0]!["verdict"]!);
    }

    [Fact]
    public async Task The_largest_cushion_still_finds_its_motif()
    {
        // A stripe every 9 in from 4 in on: a face is centred on 31 in, and reaches 23 in to the right edge of 54 in. Cut 46, finished 45.
        using HttpResponseMessage response = await service.PostAsync(
            "fits",
            """
            { "units": "in", "effort": "quick",
              "cushions": [{ "id": "a", "construction": "knife-edge", "outline": { "kind": "rectangle", "width": 20, "depth": 18 },
                             "closure": { "kind": "zipper", "side": "back" } }],
              "fabrics": [{ "id": "main", "width": 54, "repeat": { "width": 9, "motif": { "x": 4 } },
                            "sold": { "unit": "yd", "step": "1/8" }, "onHand": [{ "width": 54, "length": 40 }] }] }
            """
        );
        JsonArray largest = (await response.JsonAsync())["largest"]!.AsArray();

        Assert.Equal(45, (double)largest.First(one => (string)one!["free"]! == "width")!["width"]!);
    }

    [Fact]
    public async Task What_fits_lies_apart_on_the_offcuts_and_what_is_left_is_empty()
    {
        int fitting = 0;
        for (int number = 0; number < 60; number++)
        {
            JsonObject order = WhatIfOrders.OnHand(number);
            order["cushions"]![0]!["outline"] = new JsonObject
            {
                ["kind"] = "rectangle",
                ["width"] = 10,
                ["depth"] = 9,
            };
            Order read = OrderText.Parse(Encoding.UTF8.GetBytes(order.ToJsonString())).Order!;
            Fit fit = FitOf(read, null)!;
            fitting += fit.Verdict == FitVerdict.Fits ? 1 : 0;
            foreach (OffcutFit fabric in fit.Fabrics)
            {
                Assert.Equal(fabric.Verdict == FitVerdict.Fits, fabric.Unplaced.IsEmpty);
                int copies = fabric.Layouts.Sum(layout => layout.Placements.Length) + fabric.Unplaced.Sum(rest => rest.Copies);
                Assert.Equal(fit.Drafting.Pieces.Sum(piece => piece.Quantity), copies);
                Assert.All(fabric.Layouts, Apart);
            }
        }

        Assert.InRange(fitting, 20, 60);
        await Task.CompletedTask;
    }

    [Fact]
    public async Task An_offcut_is_told_by_its_layout_what_is_left_and_the_largest_cushion()
    {
        // Two 19 in squares (finished 18 in, 1/2 in seams) side by side on 40 in by 20 in leave 2 in by 20 in and 38 in by 1 in; 19 1/2 in
        // would still fit side by side, 20 in tall: the larger finished square is 19 in.
        using HttpResponseMessage response = await service.PostAsync(
            "fits",
            """
            {"units":"in","cushions":[{"id":"pad","construction":"knife-edge","outline":{"kind":"rectangle","width":18,"depth":18},
              "closure":{"kind":"hand-sewn"}}],
             "fabrics":[{"id":"main","width":54,"grain":"either","sold":{"unit":"yd","step":"1/8"},"onHand":[{"width":40,"length":20}]}]}
            """
        );
        JsonObject answer = await response.JsonAsync();
        JsonNode offcut = answer["fabrics"]![0]!["offcuts"]![0]!;

        Assert.True(answer["fits"]!.GetValue<bool>());
        Assert.Equal("fits", answer["fabrics"]![0]!["verdict"]!.GetValue<string>());
        Assert.Equal(2, offcut["placements"]!.AsArray().Count);
        Assert.Equal(
            [40d, 38d],
            offcut["left"]!.AsArray().Select(left => left!["width"]!.GetValue<double>() * left["length"]!.GetValue<double>())
        );
        Assert.Equal(
            ["both 19x19 impossible", "width 19x18 impossible", "depth 18x19 impossible"],
            answer["largest"]!.AsArray().Select(largest => $"{largest!["free"]} {largest["width"]}x{largest["depth"]} {largest["next"]}")
        );
    }

    [Fact]
    public async Task Pieces_spread_over_all_offcuts()
    {
        using HttpResponseMessage response = await service.PostAsync(
            "fits",
            """
            {"units":"in","pieces":[{"id":"square","quantity":3,"width":19,"length":19}],
             "fabrics":[{"id":"main","width":54,"sold":{"unit":"yd","step":"1/8"},"onHand":[{"width":20,"length":20,"quantity":2},
               {"width":54,"length":19.5}]}]}
            """
        );
        JsonObject answer = await response.JsonAsync();

        Assert.True(answer["fits"]!.GetValue<bool>());
        Assert.Equal(
            [1, 2, 3],
            answer["fabrics"]![0]!["offcuts"]!
                .AsArray()
                .SelectMany(offcut => offcut!["placements"]!.AsArray())
                .Select(placed => placed!["copy"]!.GetValue<int>())
                .Order()
        );
    }

    [Fact]
    public async Task What_cannot_fit_says_so_with_what_found_no_place()
    {
        using HttpResponseMessage response = await service.PostAsync(
            "fits",
            """
            {"units":"in","pieces":[{"id":"square","quantity":3,"width":19,"length":19},{"id":"runner","width":12,"length":40}],
             "fabrics":[{"id":"main","width":54,"sold":{"unit":"yd","step":"1/8"},"onHand":[{"width":40,"length":20}]}]}
            """
        );
        JsonNode fabric = (await response.JsonAsync())["fabrics"]![0]!;

        Assert.Equal("impossible", fabric["verdict"]!.GetValue<string>());
        Assert.Equal(["square 1", "runner 1"], fabric["unplaced"]!.AsArray().Select(rest => $"{rest!["piece"]} {rest["copies"]}"));
    }

    // Sold by the millimetre, a layout is searched for until it is short, not until it is short enough for a shop.
    private static readonly Length Millimetre = Length.FromMillimetres(1);

    private static FitVerdict Verdict(Order order, Effort effort) => FitOf(order, effort)?.Verdict ?? FitVerdict.Impossible;

    private static IntakeResult Taken(Order order) => OrderIntake.Read(order, null, Purpose.Fitting);

    // Null for an order that breaks a rule.
    private static Fit? FitOf(Order order, Effort? effort) =>
        Taken(order) is { Specification: { } specified } taken
            ? CushionService.Desk.Fit.Of(specified, taken.Warnings, effort ?? specified.Effort, 1, CancellationToken.None)
            : null;

    private static bool LiesOnOffcut(Order order)
    {
        if (FitOf(order, Effort.Quick) is not { } fit)
        {
            return false;
        }

        OffcutRoom room = fit.Fabrics[0].Layouts[0].Room;
        Drafting drafting = Drafting.Of(
            fit.Drafting.Order with
            {
                Effort = Effort.Thorough,
                Fabrics =
                [
                    .. fit.Drafting.Order.Fabrics.Select(fabric => fabric with { Sold = new SaleRule(SaleUnit.M, Millimetre, Millimetre) }),
                ],
            }
        );
        return drafting.Violations.IsEmpty && QuotePipeline.LayOut(drafting, CancellationToken.None).Single().Layout.Length <= room.Length;
    }

    private static void Apart(OffcutLayout layout)
    {
        (Length X, Length Y, Length Width, Length Length)[] boxes =
        [
            .. layout.Placements.Select(laid => (laid.X, laid.Y, laid.Width, laid.Length)),
            .. layout.Left.Select(left => (left.X, left.Y, left.Width, left.Length)),
        ];
        for (int i = 0; i < boxes.Length; i++)
        {
            Assert.True(
                boxes[i].X >= Length.Zero
                    && boxes[i].Y >= Length.Zero
                    && boxes[i].X + boxes[i].Width <= layout.Room.Width
                    && boxes[i].Y + boxes[i].Length <= layout.Room.Length
            );
            for (int j = 0; j < i; j++)
            {
                Assert.False(
                    boxes[i].X < boxes[j].X + boxes[j].Width
                        && boxes[j].X < boxes[i].X + boxes[i].Width
                        && boxes[i].Y < boxes[j].Y + boxes[j].Length
                        && boxes[j].Y < boxes[i].Y + boxes[i].Length
                );
            }
        }
    }
}
