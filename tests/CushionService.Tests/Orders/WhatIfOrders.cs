using System.Text.Json.Nodes;

namespace CushionService.Tests.Orders;

/// <summary>Generated orders with candidates, or with fabric on hand, the same for the same number.</summary>
internal static class WhatIfOrders
{
    /// <summary>An order with two to four fabrics to try instead of its first, every other time with separate cutting; one in eight is
    /// too narrow to be made.</summary>
    public static JsonObject Compared(int number)
    {
        Random random = new(number);
        JsonObject order = OrderGenerator.Sound(number);
        string unit = order["fabrics"]![0]!["sold"]!["unit"]!.GetValue<string>();
        order["currency"] = "USD";
        if (number % 3 == 0)
        {
            order["costing"] = new JsonObject
            {
                ["markup"] = 0.5,
                ["rounding"] = new JsonObject { ["step"] = "0.05" },
            };
        }

        order["candidates"] = new JsonArray(
            new JsonObject
            {
                ["fabric"] = "fabric-1",
                ["separate"] = number % 2 == 0,
                ["options"] = new JsonArray([
                    .. Enumerable
                        .Range(1, random.Next(2, 5))
                        .Select(option =>
                            new JsonObject
                            {
                                ["id"] = $"option-{option}",
                                ["width"] = random.Next(8) == 0 ? "5 in" : $"{random.Next(36, 72)} in",
                                ["grain"] = random.Next(3) == 0 ? "either" : "up-the-bolt",
                                ["sold"] = new JsonObject { ["unit"] = unit, ["step"] = "1/8" },
                                ["price"] =
                                    random.Next(5) == 0
                                        ? null
                                        : new JsonObject { ["amount"] = $"{random.Next(5, 40)}.{random.Next(10, 99)}", ["per"] = unit },
                            }.WithoutGaps()
                        ),
                ]),
            }
        );
        return order;
    }

    /// <summary>One plain cushion and one or two offcuts.</summary>
    public static JsonObject OnHand(int number, int? offcuts = null)
    {
        Random random = new(number);
        bool boxed = random.Next(3) == 0;
        return new JsonObject
        {
            ["units"] = "in",
            ["effort"] = "quick",
            ["cushions"] = new JsonArray(
                new JsonObject
                {
                    ["id"] = "pad",
                    ["construction"] = boxed ? "boxed" : "knife-edge",
                    ["outline"] = new JsonObject
                    {
                        ["kind"] = "rectangle",
                        ["width"] = random.Next(8, 30),
                        ["depth"] = random.Next(8, 24),
                    },
                    ["thickness"] = boxed ? random.Next(1, 4) : null,
                    ["closure"] = new JsonObject { ["kind"] = "hand-sewn" },
                }.WithoutGaps()
            ),
            ["workroom"] = new JsonObject { ["cuttingStep"] = "1/4" },
            ["fabrics"] = new JsonArray(
                new JsonObject
                {
                    ["id"] = "fabric-1",
                    ["width"] = 54,
                    ["selvedge"] = "1/2",
                    ["grain"] = random.Next(2) == 0 ? "railroaded" : "up-the-bolt",
                    ["shrinkage"] = random.Next(4) == 0 ? new JsonObject { ["length"] = 0.03 } : null,
                    ["sold"] = new JsonObject { ["unit"] = "yd", ["step"] = "1/8" },
                    ["onHand"] = new JsonArray([
                        .. Enumerable
                            .Range(0, offcuts ?? random.Next(1, 3))
                            .Select(_ => new JsonObject { ["width"] = random.Next(20, 55), ["length"] = random.Next(20, 60) }),
                    ]),
                }.WithoutGaps()
            ),
        };
    }

    private static JsonObject WithoutGaps(this JsonObject record)
    {
        foreach (string name in record.Where(member => member.Value is null).Select(member => member.Key).ToArray())
        {
            record.Remove(name);
        }

        return record;
    }
}
