using System.Text.Json.Nodes;

namespace CushionService.Tests.Orders;

/// <summary>The cushions of a generated order.</summary>
internal sealed class CushionGenerator
{
    private readonly Dice _dice;
    private readonly List<string> _fabrics;

    /// <summary>Cushions that draw from the order's own dice.</summary>
    /// <param name="dice">Every throw changes what is drawn after it, so the order of calls makes the order.</param>
    /// <param name="fabrics">Ids of the order's fabrics.</param>
    public CushionGenerator(Dice dice, List<string> fabrics) => (_dice, _fabrics) = (dice, fabrics);

    /// <summary>The next cushion.</summary>
    /// <param name="number">Its number in the order, from 1.</param>
    public JsonObject Cushion(int number)
    {
        bool boxed = _dice.Chance(2);
        double width = _dice.Inches(8, 40);
        string closure = boxed
            ? _dice.Pick("zipper", "hook-and-loop", "hand-sewn", "buttons", "ties")
            : _dice.Pick("zipper", "envelope", "hand-sewn");
        return Dice.Some(
            new JsonObject
            {
                ["id"] = _dice.Slip() ? "a b" : $"cushion-{number}",
                ["quantity"] = _dice.Slip() ? 0 : _dice.Next(1, 4),
                ["group"] = _dice.Chance(3) ? _dice.Pick("Terrace", "Reading room") : null,
                ["construction"] =
                    _dice.Slip() ? null
                    : boxed ? "boxed"
                    : "knife-edge",
                ["outline"] = new JsonObject
                {
                    ["kind"] = "rectangle",
                    ["width"] = _dice.Length(width, width),
                    ["depth"] = _dice.Length(8, 30),
                    ["corners"] = _dice.Chance(12) ? new JsonArray(0, _dice.Length(1, 3), 0, _dice.Slip() ? -1 : _dice.Length(1, 3)) : null,
                },
                ["thickness"] = boxed != _dice.Slip() ? _dice.Length(2, 5) : null,
                ["closure"] = new JsonObject
                {
                    ["kind"] = closure,
                    ["zipperSize"] = closure == "zipper" && _dice.Chance(4) ? (_dice.Slip() ? 4 : 5) : null,
                    ["sliders"] = closure == "zipper" && _dice.Chance(6) ? 2 : null,
                },
                ["boxing"] =
                    boxed && closure != "zipper" && _dice.Chance(3) ? new JsonObject { ["joins"] = _dice.Pick("corners", "back") } : null,
                ["handle"] =
                    boxed && _dice.Chance(4)
                        ? new JsonObject
                        {
                            ["kind"] = "folded-strap",
                            ["width"] = _dice.Length(1, 1),
                            ["length"] = _dice.Length(7, 7.5),
                            ["span"] = _dice.Length(6, 6.5),
                        }
                        : null,
                ["fabrics"] = new JsonObject
                {
                    ["top"] = _dice.Slip() ? "silk" : _dice.Pick([.. _fabrics]),
                    ["sides"] = boxed ? _dice.Pick([.. _fabrics]) : null,
                },
                ["edging"] = _dice.Chance(3) ? Edging(boxed) : null,
                ["ties"] = _dice.Chance(6) ? new JsonObject { ["pairs"] = _dice.Slip() ? 0 : 2, ["length"] = _dice.Length(8, 14) } : null,
                ["tufts"] =
                    _dice.Chance(8) && closure != "envelope"
                        ? new JsonObject
                        {
                            ["rows"] = _dice.Slip() ? null : 2,
                            ["columns"] = 2,
                            ["grid"] = _dice.Pick("square", "diamond"),
                            ["covered"] = _dice.Slip(),
                        }
                        : null,
                ["pocket"] =
                    boxed && _dice.Chance(8)
                        ? new JsonObject
                        {
                            ["side"] = _dice.Slip() ? "bottom" : "left",
                            ["width"] = _dice.Length(3, 4),
                            ["height"] = _dice.Length(1.5, 1.75),
                        }
                        : null,
                ["base"] = _dice.Chance(8) && closure != "envelope" ? "anti-slip" : null,
                ["faceJoins"] = _dice.Chance(8) ? "allow" : null,
                ["fill"] = _dice.Chance(2) ? Fill(boxed) : null,
            }
        );
    }

    private JsonObject Fill(bool boxed) =>
        _dice.Chance(3)
            ? new JsonObject
            {
                ["kind"] = "form",
                ["fullness"] = _dice.Slip() ? null : _dice.Pick("soft", "medium", "plump"),
                ["stock"] = _dice.Slip() ? "form" : null,
                ["width"] = _dice.Chance(3) ? _dice.Length(10, 30) : null,
            }
            : new JsonObject
            {
                ["kind"] = boxed ? "foam" : "loose",
                ["density"] = _dice.Slip() ? 0.5 : null,
                ["fullness"] = (!boxed && _dice.Chance(2)) || _dice.Slip() ? _dice.Pick("soft", "plump") : null,
            };

    private JsonObject Edging(bool boxed) =>
        _dice.Chance(3)
            ? new JsonObject
            {
                ["kind"] = "ruffle",
                ["at"] = new JsonArray("top"),
                ["depth"] = _dice.Length(1, 3),
                ["fullness"] = _dice.Slip() ? 9 : 1.5,
            }
            : new JsonObject
            {
                ["kind"] = "welt",
                ["at"] = boxed ? new JsonArray("top", _dice.Slip() ? "top" : "bottom") : null,
                ["cut"] = _dice.Pick("bias", "crosswise", "lengthwise"),
                ["cordDiameter"] = _dice.Length(0.125, 0.25),
                ["fabric"] = _dice.Slip() ? "silk" : _dice.Pick([.. _fabrics]),
            };
}
