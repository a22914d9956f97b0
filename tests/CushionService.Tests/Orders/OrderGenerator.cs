using System.Text.Json.Nodes;

namespace CushionService.Tests.Orders;

/// <summary>Orders as callers might write them, the same for the same number: mostly sound, some breaking a rule.</summary>
internal sealed class OrderGenerator
{
    private static readonly string[] Steps = ["1/8", "1/4", "1/3", "1"];

    private readonly Random _random;
    private readonly string _units;
    private readonly bool _careless;
    private readonly bool _triangles;
    private readonly List<string> _fabrics = [];

    private OrderGenerator(int number, bool careless)
    {
        _random = new Random(number);
        _units = Pick("in", "in", "cm", "mm");
        _careless = careless;
        // Outlines that are no rectangles take far longer to lay out.
        _triangles = Chance(12);
    }

    /// <summary>An order whose parts are each within their ranges.</summary>
    public static JsonObject Sound(int number) => new OrderGenerator(number, careless: false).Order();

    /// <summary>An order of the contract's types in which one part in twenty is out of its range, missing, or does not go with the
    /// rest.</summary>
    public static JsonObject Careless(int number) => new OrderGenerator(number, careless: true).Order();

    private JsonObject Order()
    {
        int fabrics = _random.Next(1, 3);
        _fabrics.AddRange(Enumerable.Range(1, fabrics).Select(i => $"fabric-{i}"));
        int cushions = _random.Next(0, 4);
        return Some(
            new JsonObject
            {
                ["reference"] = $"nook-{_random.Next(1000)}",
                ["units"] = Slip() ? null : _units,
                ["currency"] = Slip() ? "usd" : Pick("USD", "EUR", "JPY"),
                ["effort"] = "quick",
                ["cushions"] = new JsonArray([.. Enumerable.Range(1, cushions).Select(Cushion)]),
                ["bays"] = Chance(8) ? new JsonArray(Bay()) : null,
                ["rows"] = cushions > 1 && Chance(4) ? new JsonArray(Row(cushions)) : null,
                ["pieces"] = new JsonArray([.. Enumerable.Range(1, _random.Next(cushions == 0 ? 1 : 0, 4)).Select(Piece)]),
                ["fabrics"] = new JsonArray([.. _fabrics.Select(Fabric)]),
                ["stocks"] = Chance(3)
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
                ["customer"] = Chance(4) ? "The library" : null,
                ["due"] = Chance(4) ? (Slip() ? "soon" : "2026-12-24") : null,
                ["note"] = Chance(4) ? "Ring the bell." : null,
                ["lines"] = Chance(4)
                    ? new JsonArray(
                        new JsonObject
                        {
                            ["label"] = "Delivery",
                            ["quantity"] = Slip() ? 0 : 2,
                            ["amount"] = "3.30",
                        }
                    )
                    : null,
                ["costing"] = Chance(3) ? Costing() : null,
                ["workroom"] = Chance(4)
                    ? Some(new JsonObject { ["seamAllowance"] = Length(0.25, 0.75), ["threadRatio"] = Slip() ? 99 : 2.5 })
                    : null,
                ["prices"] = Chance(4)
                    ? new JsonArray(
                        new JsonObject
                        {
                            ["item"] = "thread",
                            ["amount"] = "0.05",
                            ["per"] = _units == "in" ? "yd" : "m",
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
                    ["amount"] = Slip() ? "-1" : "1.25",
                    ["per"] = Pick("order", "cushion", "cut"),
                }
            ),
            ["minimum"] = Chance(2) ? "40" : null,
            ["discount"] =
                Chance(2) ? new JsonObject { ["percent"] = Slip() ? 200 : 7.5, ["on"] = Pick("all", "fabric") }
                : Chance(2) ? new JsonObject { ["amount"] = "12.50" }
                : null,
            ["tax"] = Chance(2) ? new JsonObject { ["label"] = "Sales tax", ["rate"] = Slip() ? 8.25 : 0.0825 } : null,
        };

    private JsonObject Cushion(int number)
    {
        bool boxed = Chance(2);
        double width = Inches(8, 40);
        string closure = boxed ? Pick("zipper", "hook-and-loop", "hand-sewn", "buttons", "ties") : Pick("zipper", "envelope", "hand-sewn");
        return Some(
            new JsonObject
            {
                ["id"] = Slip() ? "a b" : $"cushion-{number}",
                ["quantity"] = Slip() ? 0 : _random.Next(1, 4),
                ["group"] = Chance(3) ? Pick("Terrace", "Reading room") : null,
                ["construction"] =
                    Slip() ? null
                    : boxed ? "boxed"
                    : "knife-edge",
                ["outline"] = new JsonObject
                {
                    ["kind"] = "rectangle",
                    ["width"] = Length(width, width),
                    ["depth"] = Length(8, 30),
                    ["corners"] = Chance(12) ? new JsonArray(0, Length(1, 3), 0, Slip() ? -1 : Length(1, 3)) : null,
                },
                ["thickness"] = boxed != Slip() ? Length(2, 5) : null,
                ["closure"] = new JsonObject
                {
                    ["kind"] = closure,
                    ["zipperSize"] = closure == "zipper" && Chance(4) ? (Slip() ? 4 : 5) : null,
                    ["sliders"] = closure == "zipper" && Chance(6) ? 2 : null,
                },
                ["boxing"] = boxed && closure != "zipper" && Chance(3) ? new JsonObject { ["joins"] = Pick("corners", "back") } : null,
                ["handle"] =
                    boxed && Chance(4)
                        ? new JsonObject
                        {
                            ["kind"] = "folded-strap",
                            ["width"] = Length(1, 1),
                            ["length"] = Length(7, 7.5),
                            ["span"] = Length(6, 6.5),
                        }
                        : null,
                ["fabrics"] = new JsonObject
                {
                    ["top"] = Slip() ? "silk" : Pick([.. _fabrics]),
                    ["sides"] = boxed ? Pick([.. _fabrics]) : null,
                },
                ["edging"] = Chance(3) ? Edging(boxed) : null,
                ["ties"] = Chance(6) ? new JsonObject { ["pairs"] = Slip() ? 0 : 2, ["length"] = Length(8, 14) } : null,
                ["tufts"] =
                    Chance(8) && closure != "envelope"
                        ? new JsonObject
                        {
                            ["rows"] = Slip() ? null : 2,
                            ["columns"] = 2,
                            ["grid"] = Pick("square", "diamond"),
                            ["covered"] = Slip(),
                        }
                        : null,
                ["pocket"] =
                    boxed && Chance(8)
                        ? new JsonObject
                        {
                            ["side"] = Slip() ? "bottom" : "left",
                            ["width"] = Length(3, 4),
                            ["height"] = Length(1.5, 1.75),
                        }
                        : null,
                ["base"] = Chance(8) && closure != "envelope" ? "anti-slip" : null,
                ["faceJoins"] = Chance(8) ? "allow" : null,
                ["fill"] = Chance(2) ? Fill(boxed) : null,
            }
        );
    }

    // Walls that are long enough for their mitres.
    private JsonObject Bay() =>
        Some(
            new JsonObject
            {
                ["id"] = "bay",
                ["label"] = Chance(2) ? "Bay" : null,
                ["construction"] = "boxed",
                ["walls"] = new JsonArray(Length(30, 40), Length(40, 50), Length(30, 40)),
                ["angles"] = new JsonArray(Slip() ? 45 : 135, _random.Next(110, 180)),
                ["depth"] = Length(8, 12),
                ["bulk"] = Chance(3) ? Length(0.125, 0.5) : null,
                ["thickness"] = Slip() ? null : Length(2, 5),
                ["closure"] = new JsonObject { ["kind"] = Pick("zipper", "hook-and-loop", "hand-sewn") },
                ["fabrics"] = new JsonObject { ["top"] = Slip() ? "silk" : Pick([.. _fabrics]) },
            }
        );

    private JsonObject Row(int cushions) =>
        new()
        {
            ["id"] = "row",
            ["print"] = _random.Next(8) == 0 ? "continuous" : "same",
            ["cushions"] = new JsonArray([.. Enumerable.Range(1, cushions).Select(i => (JsonNode)(Slip() ? "nobody" : $"cushion-{i}"))]),
        };

    private JsonObject Fill(bool boxed) =>
        Chance(3)
            ? new JsonObject
            {
                ["kind"] = "form",
                ["fullness"] = Slip() ? null : Pick("soft", "medium", "plump"),
                ["stock"] = Slip() ? "form" : null,
                ["width"] = Chance(3) ? Length(10, 30) : null,
            }
            : new JsonObject
            {
                ["kind"] = boxed ? "foam" : "loose",
                ["density"] = Slip() ? 0.5 : null,
                ["fullness"] = (!boxed && Chance(2)) || Slip() ? Pick("soft", "plump") : null,
            };

    private JsonObject Edging(bool boxed) =>
        Chance(3)
            ? new JsonObject
            {
                ["kind"] = "ruffle",
                ["at"] = new JsonArray("top"),
                ["depth"] = Length(1, 3),
                ["fullness"] = Slip() ? 9 : 1.5,
            }
            : new JsonObject
            {
                ["kind"] = "welt",
                ["at"] = boxed ? new JsonArray("top", Slip() ? "top" : "bottom") : null,
                ["cut"] = Pick("bias", "crosswise", "lengthwise"),
                ["cordDiameter"] = Length(0.125, 0.25),
                ["fabric"] = Slip() ? "silk" : Pick([.. _fabrics]),
            };

    private JsonObject Piece(int number)
    {
        bool triangle = _triangles && Chance(2);
        return Some(
            new JsonObject
            {
                ["id"] = $"piece-{number}",
                ["fabric"] = Pick([.. _fabrics]),
                ["quantity"] = _random.Next(1, 6),
                ["width"] = triangle ? null : Length(1, 40),
                ["length"] = triangle ? null : Length(1, 60),
                ["points"] = triangle ? Triangle() : null,
                ["rotation"] = Chance(3) ? Pick("none", "half-turn") : null,
            }
        );
    }

    private JsonArray Triangle() =>
        new(
            new JsonArray(Length(0, 0), Length(0, 1)),
            new JsonArray(Length(10, 30), Length(0, 0)),
            new JsonArray(Length(4, 8), Length(5, 40))
        );

    private JsonObject Fabric(string id)
    {
        string unit = Pick("yd", "m");
        bool owned = Chance(6);
        return Some(
            new JsonObject
            {
                ["id"] = id,
                ["width"] = Length(45, 60),
                ["selvedge"] = Chance(2) ? Length(0.25, 0.75) : null,
                ["oneWay"] = Slip() ? true : null,
                ["shrinkage"] = Chance(3) ? new JsonObject { ["length"] = Slip() ? 0.9 : 0.03, ["width"] = 0.02 } : null,
                ["sold"] = new JsonObject
                {
                    ["unit"] = unit,
                    ["step"] = Pick(Steps),
                    ["minimum"] = Chance(3) ? "1/2" : null,
                },
                ["customerOwned"] = owned ? true : null,
                ["brought"] = owned && Chance(2) ? Length(40, 200) : null,
                ["price"] =
                    Chance(2) && (!owned || Slip())
                        ? new JsonObject { ["amount"] = Slip() ? "-1" : $"{_random.Next(0, 60)}.{_random.Next(10, 99)}", ["per"] = unit }
                        : null,
            }
        );
    }

    // A length between two of inches, in the order's units or in text of its own.
    private JsonNode Length(double from, double to)
    {
        double inches = Slip() ? 5000 : Inches(from, to);
        double number = _units switch
        {
            "in" => inches,
            "cm" => Math.Round(inches * 2.54, 1),
            _ => Math.Round(inches * 25.4),
        };
        return _random.Next(6) switch
        {
            0 => FormattableString.Invariant($"{number} {_units}"),
            1 => FormattableString.Invariant($"{Math.Round(inches * 2.54, 1)} cm"),
            2 when Slip() => "about a foot",
            _ => number,
        };
    }

    private double Inches(double from, double to) => Math.Round((from + _random.NextDouble() * (to - from)) * 8) / 8;

    // Members without a value are left out, as most callers do.
    private static JsonObject Some(JsonObject members)
    {
        foreach (string empty in members.Where(member => member.Value is null).Select(member => member.Key).ToArray())
        {
            members.Remove(empty);
        }

        foreach (JsonObject inner in members.Select(member => member.Value).OfType<JsonObject>())
        {
            Some(inner);
        }

        return members;
    }

    private bool Slip() => _careless && _random.Next(20) == 0;

    private bool Chance(int oneIn) => _random.Next(oneIn) == 0;

    private string Pick(params string[] choices) => choices[_random.Next(choices.Length)];
}
