using System.Net;
using System.Text.Json.Nodes;
using CushionService.Grpc.V1;
using CushionService.Tests.BothDoors;
using CushionService.Tests.Hosting;
using Google.Protobuf.Reflection;

namespace CushionService.Tests.PriceBooks;

/// <summary>Orders that a price book prices.</summary>
public sealed class PriceBookTests : IDisposable
{
    private static readonly MessageDescriptor Wired = global::CushionService.Grpc.V1.Order.Descriptor;

    private readonly BookFolder _books = new(("nook", BookFolder.Nook));
    private readonly RunningService _service;

    public PriceBookTests() => _service = _books.Serve();

    public void Dispose()
    {
        _service.Dispose();
        _books.Dispose();
    }

    [Fact]
    public async Task The_book_gives_prices_how_fabric_is_sold_the_currency_and_the_costing()
    {
        JsonNode cost = (await QuoteAsync(OrderWith("""{}""")))["cost"]!;

        // By hand: 19 in of two faces side by side is 1 yd at least, 20.00; the zipper 2.00; 65 yd of thread, most of it to overedge 144
        // in, 1.30; half as much again.
        Assert.Equal(
            ["canvas 1 20.00", "zipper 1 2.00", "thread 68 1.36"],
            cost["lines"]!.AsArray().Select(line => $"{line!["item"]} {line["quantity"]} {line["amount"]}")
        );
        Assert.Equal(["markup 11.68"], cost["additions"]!.AsArray().Select(addition => $"{addition!["kind"]} {addition["amount"]}"));
        Assert.Equal(
            ("35.04", "USD", "nook", "1"),
            ($"{cost["total"]}", $"{cost["currency"]}", $"{cost["priceBook"]!["name"]}", $"{cost["priceBook"]!["version"]}")
        );
    }

    [Theory]
    [InlineData("""{ "currency": "USD", "prices": [{ "item": "zipper", "amount": "3.00", "per": "each" }] }""", "36.54")]
    [InlineData("""{ "costing": { "margin": 0.5 } }""", "46.72")]
    [InlineData("""{ "currency": "USD", "costing": { "rounding": { "step": "1", "direction": "up" } } }""", "36.00")]
    [InlineData("""{ "currency": "USD" }""", "35.04")]
    public async Task What_the_order_says_wins(string more, string total) =>
        Assert.Equal(total, $"{(await QuoteAsync(OrderWith(more)))["cost"]!["total"]}");

    [Theory]
    [InlineData("""{ "priceBook": "attic" }""", "/priceBook unknown-price-book")]
    [InlineData("""{ "currency": "EUR" }""", "/currency wrong-currency")]
    [InlineData("""{ "prices": [{ "item": "cord", "amount": "1", "per": "yd" }] }""", "/currency required")]
    [InlineData("""{ "fabrics": [{ "id": "linen", "width": 54 }] }""", "/fabrics/0/sold required")]
    [InlineData("""{ "fabrics": [{ "id": "x", "item": "zipper", "width": 54 }] }""", "/fabrics/0/sold required")]
    [InlineData(
        """{ "fabrics": [{ "id": "canvas", "width": 54, "sold": { "unit": "m", "step": 0.1 } }] }""",
        "/fabrics/0/sold/unit not-combinable"
    )]
    [InlineData(
        """{ "currency": "USD", "fabrics": [{ "id": "canvas", "width": 54, "price": { "amount": "9", "per": "m" } }] }""",
        "/fabrics/0/price/per not-combinable"
    )]
    public async Task What_does_not_agree_with_the_book_is_refused(string more, string violation)
    {
        JsonObject order = OrderWith(more);
        using HttpResponseMessage response = await _service.PostAsync("quotes", order.ToJsonString());

        Assert.Equal(HttpStatusCode.UnprocessableEntity, response.StatusCode);
        Assert.Equal([violation], (await response.ProblemAsync()).Violations());
    }

    // By hand: two faces of 19 in lie side by side on 54 in. 19 in = 0.4826 m: two thirds of a metre in thirds, four sevenths in sevenths
    // (4/7 = 0.5714), 2/7 steps the same; 19 in = 0.5278 yd: four sevenths too. The price of one unit is 9.00; three thirds reach the
    // break at 1.
    [Theory]
    [InlineData("m", "\"1/3\"", "0", 2.0 / 3, "6.00")]
    [InlineData("m", "\"1/3\"", "1", 1, "8.00")]
    [InlineData("yd", "\"1/7\"", "0", 4.0 / 7, "5.14")]
    [InlineData("m", "\"2/7\"", "0", 4.0 / 7, "5.14")]
    [InlineData("m", "\"2/7\"", "\"5/7\"", 6.0 / 7, "7.71")]
    public async Task A_book_sells_fabric_and_goods_by_exact_fractions(string unit, string step, string minimum, double sold, string amount)
    {
        using BookFolder books = new(
            (
                "nook",
                $$"""
                { "currency": "USD", "prices": [
                  { "item": "canvas", "amount": "9.00", "per": "{{unit}}", "step": {{step}}, "minimum": {{minimum}},
                    "breaks": [{ "from": 1, "amount": "8.00" }] },
                  { "item": "zipper", "amount": "3.00", "per": "m", "step": "1/3", "breaks": [{ "from": "1", "amount": "2.00" }] }] }
                """
            )
        );
        Assert.Empty(books.Faults);
        using RunningService service = books.Serve();
        JsonObject order = OrderWith("{}");
        using HttpResponseMessage response = await service.PostAsync("quotes", order.ToJsonString());
        JsonObject answer = await response.JsonAsync();
        JsonArray lines = answer["cost"]!["lines"]!.AsArray();

        Assert.Equal(sold, (double)answer["yardage"]![0]!["soldLength"]!, 12);
        Assert.Equal((sold, amount), ((double)lines[0]!["quantity"]!, $"{lines[0]!["amount"]}"));
        // 18 in of opening take 20 in of chain or less: two thirds of a metre, at 3.00.
        Assert.Equal((2.0 / 3, "2.00"), ((double)lines[1]!["quantity"]!, $"{lines[1]!["amount"]}"));
        Google.Protobuf.IMessage grpc = await service.Calls.QuoteAsync(new() { Order = (Order)Wire.Message(order, Wired) });
        Assert.True(JsonNode.DeepEquals(Wire.Plain(answer), Wire.Json(grpc)));
    }

    // The same steps in the order itself, over both doors; what is no quantity is refused with its place.
    [Theory]
    [InlineData("\"1/3\"", "0.6666666666666666")]
    [InlineData("\"1 1/3\"", "1.3333333333333333")]
    [InlineData("0.25", "0.5")]
    [InlineData("\"third\"", "/prices/0/step not-a-quantity")]
    [InlineData("\"1/0\"", "/prices/0/step not-a-quantity")]
    [InlineData("\"-1/3\"", "/prices/0/step out-of-range 0.001..1000")]
    [InlineData("\"1/9999\"", "/prices/0/step out-of-range 0.001..1000")]
    [InlineData("-1", "/prices/0/step out-of-range 0.001..1000")]
    [InlineData("true", "/prices/0/step wrong-type")]
    public async Task An_order_sells_goods_by_exact_fractions(string step, string expected)
    {
        JsonObject order = OrderWith(
            $$"""
            { "currency": "USD", "prices": [{ "item": "zipper", "amount": "3.00", "per": "m", "step": {{step}} }],
              "fabrics": [{ "id": "canvas", "width": 54, "sold": { "unit": "yd", "step": "1/8" },
                            "price": { "amount": "9", "per": "yd" } }] }
            """
        );
        order.Remove("priceBook");
        using HttpResponseMessage response = await _service.PostAsync("quotes", order.ToJsonString());
        string found = response.IsSuccessStatusCode
            ? $"{(await response.JsonAsync())["cost"]!["lines"]![1]!["quantity"]}"
            : (await response.ProblemAsync()).Violations().Single();

        Assert.Equal(expected.Split(' ')[0], found.Split(' ')[0]);
        Assert.Equal(expected.Split(' ').ElementAtOrDefault(1), found.Split(' ').ElementAtOrDefault(1));
        if (response.IsSuccessStatusCode)
        {
            Google.Protobuf.IMessage grpc = await _service.Calls.QuoteAsync(new() { Order = (Order)Wire.Message(order, Wired) });
            Assert.True(JsonNode.DeepEquals(Wire.Plain(await response.JsonAsync()), Wire.Json(grpc)));
        }
    }

    [Fact]
    public async Task Both_doors_price_alike()
    {
        foreach (string call in new[] { "quotes", "comparisons" })
        {
            JsonObject order = OrderWith(
                """{ "currency": "USD", "costing": { "labour": { "hourlyRate": "30", "operations": [{ "operation": "knife-edge","""
                    + """ "minutes": 25 }] }, "contingency": 0.05, "rounding": { "step": "0.25" } } }"""
            );
            if (call == "comparisons")
            {
                order["candidates"] = JsonNode.Parse(
                    """[{ "fabric": "canvas", "options": [{ "id": "wide", "item": "canvas", "width": 60 }] }]"""
                );
            }

            using HttpResponseMessage response = await _service.PostAsync(call, order.ToJsonString());
            Order message = (Order)Wire.Message(order, Wired);
            Google.Protobuf.IMessage grpc =
                call == "quotes"
                    ? await _service.Calls.QuoteAsync(new() { Order = message })
                    : await _service.Calls.CompareAsync(new() { Order = message });
            JsonNode? rest = Wire.Plain(await response.JsonAsync());
            Assert.True(JsonNode.DeepEquals(rest, Wire.Json(grpc)), $"REST: {rest}\ngRPC: {Wire.Json(grpc)}");
        }
    }

    [Fact]
    public async Task An_option_of_a_comparison_is_priced_under_its_own_name()
    {
        JsonObject order = OrderWith("{}");
        order["candidates"] = JsonNode.Parse(
            """[{ "fabric": "canvas", "options": [{ "id": "linen", "width": 54, "sold": { "unit": "yd", "step": 0.25, "minimum": 1 }"""
                + """ }, { "id": "canvas", "width": 54 }] }]"""
        );
        using HttpResponseMessage response = await _service.PostAsync("comparisons", order.ToJsonString());
        JsonArray options = (await response.JsonAsync())["options"]!.AsArray();

        Assert.Equal(["canvas 35.04", "linen 5.04"], options.Select(option => $"{option!["option"]} {option["total"]}"));
        Assert.Equal(["canvas"], options[1]!["unpriced"]!.AsArray().Select(item => $"{item}"));
    }

    private static JsonObject OrderWith(string more)
    {
        JsonObject order = JsonNode
            .Parse(
                """
                {
                  "units": "in", "effort": "quick", "priceBook": "nook",
                  "cushions": [{ "id": "pillow", "construction": "knife-edge", "outline": { "kind": "rectangle", "width": 18,
                    "depth": 18 }, "closure": { "kind": "zipper" } }],
                  "fabrics": [{ "id": "canvas", "width": 54 }]
                }
                """
            )!
            .AsObject();
        foreach ((string name, JsonNode? value) in JsonNode.Parse(more)!.AsObject())
        {
            order[name] = value!.DeepClone();
        }

        return order;
    }

    private async Task<JsonObject> QuoteAsync(JsonObject order)
    {
        using HttpResponseMessage response = await _service.PostAsync("quotes", order.ToJsonString());
        JsonObject answer = await response.JsonAsync();
        Assert.True(response.StatusCode == HttpStatusCode.OK, answer.ToString());
        return answer;
    }
}
