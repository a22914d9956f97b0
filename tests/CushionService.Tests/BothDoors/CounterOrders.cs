using System.Text.Json.Nodes;
using CushionService.Tests.Orders.Covers;

namespace CushionService.Tests.BothDoors;

/// <summary>Generated orders with what a counter writes on them besides: the job, groups, lines, a minimum, fabric by weight, fabric on
/// hand; some of them with a fault.</summary>
internal static class CounterOrders
{
    private static readonly string[] Calls =
    [
        "quotes",
        "quotes",
        "quotes",
        "validations",
        "pieces",
        "layouts",
        "yardage",
        "quotes",
        "fits",
    ];

    /// <summary>The order of a number, the same each time, with the call that it is sent to; null where none is sound.</summary>
    public static (string Call, JsonObject Order)? Of(int number)
    {
        if (CoverOrders.Order(number, "quick") is not { } sound)
        {
            return null;
        }

        JsonObject order = JsonNode.Parse(sound.ToJsonString())!.AsObject();
        Random random = new(number);
        string call = Calls[number % Calls.Length];
        Job(order, random);
        Money(order, random);
        foreach (JsonNode? fabric in order["fabrics"]!.AsArray())
        {
            Weigh(fabric!.AsObject(), random);
        }

        if (call == "fits")
        {
            OnHand(order["fabrics"]![0]!.AsObject(), order["units"]!.GetValue<string>(), random);
        }

        if (random.Next(5) == 0)
        {
            Spoil(order, random);
        }

        return (call, order);
    }

    private static void Job(JsonObject order, Random random)
    {
        order["customer"] = "The café <on the quay>";
        order["due"] = "2026-12-18";
        if (random.Next(2) == 0)
        {
            order["note"] = "Ring before delivery: 2nd floor.\nAsk for the key.";
        }

        foreach (JsonNode? cushion in order["cushions"]!.AsArray())
        {
            if (random.Next(3) > 0)
            {
                cushion!["group"] = random.Next(2) == 0 ? "Quay" : "Reading room";
            }
        }
    }

    private static void Money(JsonObject order, Random random)
    {
        if (random.Next(3) > 0)
        {
            order["lines"] = new JsonArray(
                new JsonObject
                {
                    ["label"] = "Delivery",
                    ["quantity"] = random.Next(1, 4),
                    ["amount"] = $"{random.Next(1, 30)}.{random.Next(10, 99)}",
                }
            );
        }

        JsonObject costing = order["costing"] as JsonObject ?? [];
        order["costing"] = costing;
        costing["minimum"] = $"{random.Next(0, 400)}.00";
        if (random.Next(2) == 0)
        {
            costing["discount"] = new JsonObject
            {
                ["amount"] = $"{random.Next(0, 3)}.50",
                ["on"] = random.Next(2) == 0 ? "fabric" : "all",
            };
        }
    }

    private static void Weigh(JsonObject fabric, Random random)
    {
        if (random.Next(6) > 0)
        {
            return;
        }

        string unit = random.Next(2) == 0 ? "kg" : "lb";
        fabric["weight"] = random.Next(100, 900) / 2.0;
        fabric["sold"] = new JsonObject
        {
            ["unit"] = unit,
            ["step"] = random.Next(2) == 0 ? "1/8" : "0.01",
            ["minimum"] = random.Next(2),
        };
        if (fabric["price"] is JsonObject price)
        {
            price["per"] = unit;
        }
    }

    private static void OnHand(JsonObject fabric, string units, Random random)
    {
        double inch =
            units == "in" ? 1
            : units == "cm" ? 2.54
            : 25.4;
        fabric["width"] = Of(60);
        bool hides = random.Next(3) == 0;
        if (hides)
        {
            fabric.Remove("repeat");
        }

        fabric["onHand"] = new JsonArray([
            .. Enumerable
                .Range(0, random.Next(1, 3))
                .Select(i =>
                    hides
                        ? new JsonObject
                        {
                            ["points"] = new JsonArray(
                                Corner(0, 0),
                                Corner(random.Next(40, 60), random.Next(0, 8)),
                                Corner(random.Next(30, 60), random.Next(60, 90)),
                                Corner(5, random.Next(40, 80))
                            ),
                        }
                        : new JsonObject
                        {
                            ["width"] = Of(random.Next(30, 60)),
                            ["length"] = Of(random.Next(20, 120)),
                            ["lot"] = random.Next(2) == 0 ? "A" : "B",
                        }
                ),
        ]);

        double Of(double inches) => Math.Round(inches * inch, 2);
        JsonArray Corner(double x, double y) => new(Of(x), Of(y));
    }

    // One field of the order, anywhere, is left out, or made far too large.
    private static void Spoil(JsonObject order, Random random)
    {
        JsonObject at = order;
        while (true)
        {
            KeyValuePair<string, JsonNode?>[] members = [.. at];
            if (members.Length == 0)
            {
                return;
            }

            (string name, JsonNode? value) = members[random.Next(members.Length)];
            switch (value)
            {
                case JsonObject inner:
                    at = inner;
                    continue;
                case JsonArray { Count: > 0 } list when list[0] is JsonObject first:
                    at = first;
                    continue;
                case JsonValue number when number.GetValueKind() == System.Text.Json.JsonValueKind.Number:
                    at[name] = 123_456;
                    return;
                default:
                    at.Remove(name);
                    return;
            }
        }
    }
}
