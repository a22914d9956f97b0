using System.Globalization;
using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CushionService.Desk;
using CushionService.Json;
using CushionService.Tests.Hosting;
using CushionService.Tests.Orders;

namespace CushionService.Tests.Comparing;

/// <summary>The same order in several fabrics, cheapest first.</summary>
public sealed class ComparisonTests(RunningService service) : IClassFixture<RunningService>
{
    private const int Count = 150;

    [Fact]
    public void A_dearer_option_never_stands_before_a_cheaper_one()
    {
        int ranked = 0;
        for (int number = 0; number < Count; number++)
        {
            JsonObject order = WhatIfOrders.Compared(number);
            if (
                new OrderDesk()
                    .Handle(OrderText.Parse(Encoding.UTF8.GetBytes(order.ToJsonString())), Purposes.Comparison, CancellationToken.None)
                    .Answer
                is not { } compared
            )
            {
                continue;
            }

            JsonNode answer = JsonSerializer.SerializeToNode(compared, ContractJson.Options)!;
            JsonObject[] options = [.. answer["options"]!.AsArray().Select(option => option!.AsObject())];
            int asked =
                order["candidates"]![0]!["options"]!.AsArray().Count * (order["candidates"]![0]!["separate"]!.GetValue<bool>() ? 2 : 1);
            Assert.Equal(asked, options.Length);
            Assert.Equal(options.Select(Rank).Order(), options.Select(Rank));
            ranked += options.Count(option => Rank(option).Class == 0) > 1 ? 1 : 0;
            foreach (JsonObject option in options)
            {
                Assert.Equal(Rank(option).Class == 2, option["yardage"]!.AsArray().Count == 0);
                Assert.DoesNotContain('\n', option["change"]!.GetValue<string>());
            }
        }

        Assert.True(ranked > Count / 3, $"Only {ranked} orders had something to rank.");
    }

    [Fact]
    public async Task An_option_costs_what_its_order_would_cost_by_itself()
    {
        int held = 0;
        for (int number = 1; number < 40; number += 2)
        {
            JsonObject order = WhatIfOrders.Compared(number);
            using HttpResponseMessage response = await service.PostAsync("comparisons", order.ToJsonString());
            if (response.StatusCode != HttpStatusCode.OK)
            {
                continue;
            }

            foreach (JsonNode? option in (await response.JsonAsync())["options"]!.AsArray())
            {
                JsonObject own = order.DeepClone().AsObject();
                own.Remove("candidates");
                JsonNode fabric = At(order, option!["pointer"]!.GetValue<string>()).DeepClone();
                fabric["id"] = "fabric-1";
                own["fabrics"]![0] = fabric;
                using HttpResponseMessage single = await service.PostAsync("quotes", own.ToJsonString());
                JsonObject quote = await single.JsonAsync();

                Assert.Equal(single.StatusCode == HttpStatusCode.OK, option["violations"]!.AsArray().Count == 0);
                Assert.Equal(quote["cost"]?["total"]?.GetValue<string>(), option["total"]?.GetValue<string>());
                Assert.True(single.StatusCode != HttpStatusCode.OK || JsonNode.DeepEquals(quote["yardage"], option["yardage"]));
                held++;
            }
        }

        Assert.True(held > 20);
    }

    [Fact]
    public async Task What_changes_reads_in_one_line()
    {
        using HttpResponseMessage response = await service.PostAsync(
            "comparisons",
            """
            {"units":"in","currency":"USD",
             "pieces":[{"id":"runner","quantity":2,"width":30,"length":40}],
             "fabrics":[{"id":"main","width":54,"sold":{"unit":"yd","step":"1/8"},"price":{"amount":"20.00","per":"yd"}}],
             "candidates":[{"fabric":"main","options":[
               {"id":"wide","width":60,"sold":{"unit":"yd","step":"1/8"},"price":{"amount":"24.00","per":"yd"}},
               {"id":"narrow","width":20,"sold":{"unit":"yd","step":"1/8"}},
               {"id":"railroaded","width":54,"grain":"either","sold":{"unit":"yd","step":"1/8"},"price":{"amount":"20.00","per":"yd"}},
               {"id":"unpriced","width":60,"sold":{"unit":"yd","step":"1/8"}}]}]}
            """
        );
        JsonObject answer = await response.JsonAsync();
        Dictionary<string, JsonNode> options = answer["options"]!
            .AsArray()
            .ToDictionary(option => option!["option"]!.GetValue<string>(), option => option!);

        // By hand: 80 in side after side is 2 1/4 yd, 45.00; two across 60 in are 40 in, 1 1/8 yd, 27.00; turned, 40 across and 60 along, 1
        // 3/4 yd, 35.00.
        Assert.Equal("45.00", answer["given"]!["total"]!.GetValue<string>());
        Assert.Equal(
            ["wide", "railroaded", "unpriced", "narrow"],
            answer["options"]!.AsArray().Select(option => option!["option"]!.GetValue<string>())
        );
        Assert.Equal("27.00", options["wide"]["total"]!.GetValue<string>());
        Assert.Equal("35.00", options["railroaded"]["total"]!.GetValue<string>());
        Assert.Equal(
            "width 60 in instead of 54 in, price amount 24.00 instead of 20.00: "
                + "1 1/8 yd of main instead of 2 1/4 yd of main, 18.00 USD less",
            options["wide"]["change"]!.GetValue<string>()
        );
        Assert.Equal(
            ["wider-than-fabric"],
            options["narrow"]["violations"]!.AsArray().Select(violation => violation!["code"]!.GetValue<string>())
        );
    }

    [Theory]
    [InlineData("""  """)]
    [InlineData(""" "selvedge": 0, "oneWay": false, "grain": "up-the-bolt", "coated": false, """)]
    [InlineData(""" "selvedge": "0 in", "shrinkage": { "length": 0, "width": 0 }, """)]
    public async Task A_default_that_is_written_out_is_no_change(string defaults)
    {
        using HttpResponseMessage response = await service.PostAsync(
            "comparisons",
            $$$"""
            {"units":"in","currency":"USD",
             "pieces":[{"id":"runner","quantity":2,"width":30,"length":40}],
             "fabrics":[{"id":"main","width":54,"sold":{"unit":"yd","step":"1/8"},"price":{"amount":"20.00","per":"yd"}}],
             "candidates":[{"fabric":"main","options":[
               {"id":"same","width":54,{{{defaults}}}"sold":{"unit":"yd","step":0.125,"minimum":"1/8"},"price":{"amount":"20",
                 "per":"yd"}}]}]}
            """
        );

        Assert.Equal(
            "the same fabric: 2 1/4 yd of main instead of 2 1/4 yd of main, the same total",
            (await response.JsonAsync())["options"]![0]!["change"]!.GetValue<string>()
        );
    }

    [Fact]
    public async Task An_option_of_other_units_says_each_difference_and_no_default()
    {
        using HttpResponseMessage response = await service.PostAsync(
            "comparisons",
            """
            {"units":"in","currency":"USD",
             "pieces":[{"id":"runner","quantity":2,"width":30,"length":40}],
             "fabrics":[{"id":"main","width":54,"sold":{"unit":"yd","step":"1/8"},"price":{"amount":"20.00","per":"yd"}}],
             "candidates":[{"fabric":"main","options":[
               {"id":"metres","width":54,"grain":"either","sold":{"unit":"m","step":0.1},
                 "price":{"amount":"21.5","per":"m","cutFee":"1"}}]}]}
            """
        );

        // By hand: turned, 60 in along is 1.524 m, 1.6 m: 34.40 and a cut, 35.40, 9.60 less than 2 1/4 yd at 20.00. The least that is sold
        // is one step for both, and no difference of its own.
        Assert.Equal(
            "grain either instead of up-the-bolt, sold unit m instead of yd, sold step 0.1 instead of 1/8, price amount 21.50 instead of "
                + "20.00, price per m instead of yd, price cut fee 1.00 instead of none: 1.6 m of main instead of 2 1/4 yd of main, "
                + "9.60 USD less",
            (await response.JsonAsync())["options"]![0]!["change"]!.GetValue<string>()
        );
    }

    [Fact]
    public async Task Separate_cutting_buys_a_length_for_each_cushion()
    {
        using HttpResponseMessage response = await service.PostAsync(
            "comparisons",
            """
            {"units":"in","currency":"USD",
             "cushions":[
               {"id":"a","construction":"knife-edge","outline":{"kind":"rectangle","width":18,"depth":18},"closure":{"kind":"hand-sewn"}},
               {"id":"b","construction":"knife-edge","outline":{"kind":"rectangle","width":14,"depth":14},"closure":{"kind":"hand-sewn"}}],
             "fabrics":[{"id":"main","width":54,"sold":{"unit":"yd","step":"1/8"},"price":{"amount":"20.00","per":"yd"}}],
             "candidates":[{"fabric":"main","separate":true,"options":[{"id":"same","width":54,"sold":{"unit":"yd","step":"1/8"},
               "price":{"amount":"20.00","per":"yd"}}]}]}
            """
        );
        JsonArray options = (await response.JsonAsync())["options"]!.AsArray();

        Assert.Equal([false, true], options.Select(option => option!["separate"]!.GetValue<bool>()));
        Assert.Single(options[0]!["yardage"]!.AsArray());
        Assert.Equal([0.625, 0.5], options[1]!["yardage"]!.AsArray().Select(line => line!["soldLength"]!.GetValue<double>()));
        Assert.Equal(
            [
                [],
                ["/candidates/0/options/0/sold several-cuts"],
            ],
            options.Select(option => option!["warnings"]!.AsArray().Select(warning => $"{warning!["pointer"]} {warning["code"]}").ToArray())
        );
    }

    // An option on a repeat says what a quote of it would say: the motif's place is not given, and knowing it may save fabric. Price breaks
    // that are written out as an empty list are none.
    [Fact]
    public async Task An_option_on_a_repeat_says_that_the_motif_is_unknown()
    {
        using HttpResponseMessage response = await service.PostAsync(
            "comparisons",
            """
            {"units":"in","currency":"USD","effort":"quick",
             "cushions":[
               {"id":"a","construction":"knife-edge","outline":{"kind":"rectangle","width":18,"depth":18},"closure":{"kind":"hand-sewn"}}],
             "fabrics":[{"id":"main","width":54,"sold":{"unit":"yd","step":"1/8"},"price":{"amount":"20.00","per":"yd"}}],
             "candidates":[{"fabric":"main","options":[
               {"id":"print","width":54,"repeat":{"length":20,"width":20},"sold":{"unit":"yd","step":"1/8"},
                "price":{"amount":"20.00","per":"yd"}},
               {"id":"same","width":54,"sold":{"unit":"yd","step":"1/8"},"price":{"amount":"20.00","per":"yd","breaks":[]}}]}]}
            """
        );
        Dictionary<string, JsonNode> options = (await response.JsonAsync())["options"]!
            .AsArray()
            .ToDictionary(option => option!["option"]!.GetValue<string>(), option => option!);

        Assert.Equal(
            ["/candidates/0/options/0/repeat motif-unknown"],
            options["print"]["warnings"]!.AsArray().Select(warning => $"{warning!["pointer"]} {warning["code"]}")
        );
        Assert.StartsWith("the same fabric: ", $"{options["same"]["change"]}", StringComparison.Ordinal);
    }

    // Priced by total, unpriced by length in metres, then what cannot be made.
    private static (int Class, decimal Size) Rank(JsonObject option)
    {
        if (option["violations"]!.AsArray().Count > 0)
        {
            return (2, 0);
        }

        string[] unpriced = [.. option["unpriced"]!.AsArray().Select(item => item!.GetValue<string>())];
        decimal metres = option["yardage"]!
            .AsArray()
            .Sum(line => line!["soldLength"]!.GetValue<decimal>() * (line["soldUnit"]!.GetValue<string>() == "yd" ? 0.9144m : 1));
        return option["yardage"]!.AsArray().Any(line => unpriced.Contains(line!["fabric"]!.GetValue<string>()))
            ? (1, decimal.Round(metres, 6))
            : (0, decimal.Parse(option["total"]!.GetValue<string>(), CultureInfo.InvariantCulture));
    }

    private static JsonNode At(JsonNode root, string pointer) =>
        pointer.Split('/')[1..].Aggregate(root, (node, step) => int.TryParse(step, out int index) ? node[index]! : node[step]!);
}
