using System.Text.Json.Nodes;

namespace CushionService.Tests.Orders;

/// <summary>Orders as callers might write them, the same for the same number: mostly sound, some breaking a rule.</summary>
internal sealed class OrderGenerator
{
    private static readonly string[] Steps = ["1/8", "1/4", "1/3", "1"];

    private readonly Dice _dice;
    private readonly bool _triangles;
    private readonly List<string> _fabrics = [];

    private OrderGenerator(int number, bool careless)
    {
        _dice = new Dice(number, careless);
        // Outlines that are no rectangles take far longer to lay out.
        _triangles = _dice.Chance(12);
    }

    /// <summary>An order whose parts are each within their ranges.</summary>
    public static JsonObject Sound(int number) => new OrderGenerator(number, careless: false).Order();

    /// <summary>An order of the contract's types in which one part in twenty is out of its range, missing, or does not go with the
    /// rest.</summary>
    public static JsonObject Careless(int number) => new OrderGenerator(number, careless: true).Order();

    private JsonObject Order()
    {
        int fabrics = _dice.Next(1, 3);
        _fabrics.AddRange(Enumerable.Range(1, fabrics).Select(i => $"fabric-{i}"));
        int cushions = _dice.Next(0, 4);
        return Dice.Some(
            new JsonObject
            {
                ["reference"] = $"nook-{_dice.Next(1000)}",
                ["units"] = _dice.Slip() ? null : _dice.Units,
                ["currency"] = _dice.Slip() ? "usd" : _dice.Pick("USD", "EUR", "JPY"),
                ["effort"] = "quick",
                ["cushions"] = new JsonArray([.. Enumerable.Range(1, cushions).Select(new CushionGenerator(_dice, _fabrics).Cushion)]),
                ["bays"] = _dice.Chance(8) ? new JsonArray(Bay()) : null,
                ["rows"] = cushions > 1 && _dice.Chance(4) ? new JsonArray(Row(cushions)) : null,
                ["pieces"] = new JsonArray([.. Enumerable.Range(1, _dice.Next(cushions == 0 ? 1 : 0, 4)).Select(Piece)]),
                ["fabrics"] = new JsonArray([.. _fabrics.Select(Fabric)]),
                ["stocks"] = _dice.Chance(3)
                    ? new JsonArray(
                        new JsonObject
                        {
                            ["id"] = "form-20",
                            ["kind"] = "form",
                            ["width"] = "20 in",
                            ["depth"] = "20 in",
                        }
                    )
                    : null,
                ["customer"] = _dice.Chance(4) ? "The library" : null,
                ["due"] = _dice.Chance(4) ? (_dice.Slip() ? "soon" : "2026-12-24") : null,
                ["note"] = _dice.Chance(4) ? "Ring the bell." : null,
                ["lines"] = _dice.Chance(4)
                    ? new JsonArray(
                        new JsonObject
                        {
                            ["label"] = "Delivery",
                            ["quantity"] = _dice.Slip() ? 0 : 2,
                            ["amount"] = "3.30",
                        }
                    )
                    : null,
                ["costing"] = _dice.Chance(3) ? Costing() : null,
                ["workroom"] = _dice.Chance(4)
                    ? Dice.Some(new JsonObject { ["seamAllowance"] = _dice.Length(0.25, 0.75), ["threadRatio"] = _dice.Slip() ? 99 : 2.5 })
                    : null,
                ["prices"] = _dice.Chance(4)
                    ? new JsonArray(
                        new JsonObject
                        {
                            ["item"] = "thread",
                            ["amount"] = "0.05",
                            ["per"] = _dice.Units == "in" ? "yd" : "m",
                        }
                    )
                    : null,
            }
        );
    }

    private JsonObject Costing() =>
        new()
        {
            ["charges"] = new JsonArray(
                new JsonObject
                {
                    ["label"] = "Cutting",
                    ["amount"] = _dice.Slip() ? "-1" : "1.25",
                    ["per"] = _dice.Pick("order", "cushion", "cut"),
                }
            ),
            ["minimum"] = _dice.Chance(2) ? "40" : null,
            ["discount"] =
                _dice.Chance(2) ? new JsonObject { ["percent"] = _dice.Slip() ? 200 : 7.5, ["on"] = _dice.Pick("all", "fabric") }
                : _dice.Chance(2) ? new JsonObject { ["amount"] = "12.50" }
                : null,
            ["tax"] = _dice.Chance(2) ? new JsonObject { ["label"] = "Sales tax", ["rate"] = _dice.Slip() ? 8.25 : 0.0825 } : null,
        };

    // Walls that are long enough for their mitres.
    private JsonObject Bay() =>
        Dice.Some(
            new JsonObject
            {
                ["id"] = "bay",
                ["label"] = _dice.Chance(2) ? "Bay" : null,
                ["construction"] = "boxed",
                ["walls"] = new JsonArray(_dice.Length(30, 40), _dice.Length(40, 50), _dice.Length(30, 40)),
                ["angles"] = new JsonArray(_dice.Slip() ? 45 : 135, _dice.Next(110, 180)),
                ["depth"] = _dice.Length(8, 12),
                ["bulk"] = _dice.Chance(3) ? _dice.Length(0.125, 0.5) : null,
                ["thickness"] = _dice.Slip() ? null : _dice.Length(2, 5),
                ["closure"] = new JsonObject { ["kind"] = _dice.Pick("zipper", "hook-and-loop", "hand-sewn") },
                ["fabrics"] = new JsonObject { ["top"] = _dice.Slip() ? "silk" : _dice.Pick([.. _fabrics]) },
            }
        );

    private JsonObject Row(int cushions) =>
        new()
        {
            ["id"] = "row",
            ["print"] = _dice.Next(8) == 0 ? "continuous" : "same",
            ["cushions"] = new JsonArray([
                .. Enumerable.Range(1, cushions).Select(i => (JsonNode)(_dice.Slip() ? "nobody" : $"cushion-{i}")),
            ]),
        };

    private JsonObject Piece(int number)
    {
        bool triangle = _triangles && _dice.Chance(2);
        return Dice.Some(
            new JsonObject
            {
                ["id"] = $"piece-{number}",
                ["fabric"] = _dice.Pick([.. _fabrics]),
                ["quantity"] = _dice.Next(1, 6),
                ["width"] = triangle ? null : _dice.Length(1, 40),
                ["length"] = triangle ? null : _dice.Length(1, 60),
                ["points"] = triangle ? Triangle() : null,
                ["rotation"] = _dice.Chance(3) ? _dice.Pick("none", "half-turn") : null,
            }
        );
    }

    private JsonArray Triangle() =>
        new(
            new JsonArray(_dice.Length(0, 0), _dice.Length(0, 1)),
            new JsonArray(_dice.Length(10, 30), _dice.Length(0, 0)),
            new JsonArray(_dice.Length(4, 8), _dice.Length(5, 40))
        );

    private JsonObject Fabric(string id)
    {
        string unit = _dice.Pick("yd", "m");
        bool owned = _dice.Chance(6);
        return Dice.Some(
            new JsonObject
            {
                ["id"] = id,
                ["width"] = _dice.Length(45, 60),
                ["selvedge"] = _dice.Chance(2) ? _dice.Length(0.25, 0.75) : null,
                ["oneWay"] = _dice.Slip() ? true : null,
                ["shrinkage"] = _dice.Chance(3) ? new JsonObject { ["length"] = _dice.Slip() ? 0.9 : 0.03, ["width"] = 0.02 } : null,
                ["sold"] = new JsonObject
                {
                    ["unit"] = unit,
                    ["step"] = _dice.Pick(Steps),
                    ["minimum"] = _dice.Chance(3) ? "1/2" : null,
                },
                ["customerOwned"] = owned ? true : null,
                ["brought"] = owned && _dice.Chance(2) ? _dice.Length(40, 200) : null,
                ["price"] =
                    _dice.Chance(2) && (!owned || _dice.Slip())
                        ? new JsonObject { ["amount"] = _dice.Slip() ? "-1" : $"{_dice.Next(0, 60)}.{_dice.Next(10, 99)}", ["per"] = unit }
                        : null,
            }
        );
    }
}
