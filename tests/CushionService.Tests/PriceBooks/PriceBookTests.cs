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
            ["canvas 1 20.00", "zipper 1 2.00", "thread 65 1.30"],
            cost["lines"]!.AsArray().Select(line => $"{line!["item"]} {line["quantity"]} {line["amount"]}")
        );
        Assert.Equal(["markup 11.65"], cost["additions"]!.AsArray().Select(addition => $"{addition!["kind"]} {addition["amount"]}"));
        Assert.Equal(
            ("34.95", "USD", "nook", "1"),
            ($"{cost["total"]}", $"{cost["currency"]}", $"{cost["priceBook"]!["name"]}", $"{cost["priceBook"]!["version"]}")
        );
    }

    [Theory]
    [InlineData("""{ "currency": "USD", "prices": [{ "item": "zipper", "amount": "3.00", "per": "each" }] }""", "36.45")]
    [InlineData("""{ "costing": { "margin": 0.5 } }""", "46.60")]
    [InlineData("""{ "currency": "USD", "costing": { "rounding": { "step": "1", "direction": "up" } } }""", "35.00")]
    [InlineData("""{ "currency": "USD" }""", "34.95")]
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

        Assert.Equal(["canvas 34.95", "linen 4.95"], options.Select(option => $"{option!["option"]} {option["total"]}"));
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
