using System.Text.Json.Nodes;
using CushionService.Contract;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Tests.Orders.Covers;

/// <summary>How covers close, what edges them, what is added to them and what fills them.</summary>
internal static class CoverTrims
{
    public static JsonObject Closure(ClosureKind kind, Side side, ConstructionOffer offer, Sizes sizes)
    {
        JsonObject closure = new() { ["kind"] = Words<ClosureKind>.Of(kind), ["side"] = Words<Side>.Of(side) };
        (bool boxed, bool flapped) = (offer.ZipsThreeSides, offer.FlapsEitherWay);
        if (kind == ClosureKind.Zipper)
        {
            Maybe(20, "lap", () => sizes.Between(0.25, 0.5));
            Maybe(20, "zipperSize", () => sizes.Pick(3, 5, 10));
            Maybe(15, "sliders", () => 2);
            Maybe(10, "zipperColour", () => "navy");
            if (boxed && side != Side.Bottom)
            {
                Maybe(15, "extent", () => sizes.Pick("one-side", "three-sides"));
            }
        }
        else if (kind == ClosureKind.Envelope && flapped)
        {
            Maybe(40, "flaps", () => sizes.Pick("long-side", "short-side"));
        }
        else if (kind != ClosureKind.HandSewn)
        {
            Maybe(30, "fold", () => sizes.Between(0.25, 0.75));
        }

        return closure;

        void Maybe(int percent, string field, Func<JsonNode> value)
        {
            if (sizes.Chance(percent))
            {
                closure[field] = value();
            }
        }
    }

    public static JsonObject Edging(EdgingOffer offer, bool corners, Sizes sizes)
    {
        JsonObject edging = new() { ["kind"] = Words<EdgingKind>.Of(offer.Kind) };
        EdgingPlace[] places = [.. offer.Places.Where(place => place != EdgingPlace.Corners || corners)];
        if (sizes.Chance(60))
        {
            edging["at"] = new JsonArray([
                .. places.Where((_, i) => i == 0 || sizes.Chance(60)).Select(place => (JsonNode)Words<EdgingPlace>.Of(place)),
            ]);
        }

        switch (offer.Kind)
        {
            case EdgingKind.Welt:
                edging["cut"] = sizes.Pick("bias", "crosswise", "lengthwise");
                edging["cordDiameter"] = sizes.Between(0.125, 0.5);
                break;
            case EdgingKind.Ruffle:
                edging["depth"] = sizes.Between(1, 4);
                edging["fullness"] = sizes.Pick(1.5, 2, 2.5);
                edging["lining"] = sizes.Pick("folded", "single");
                break;
            case EdgingKind.Flange:
                edging["depth"] = sizes.Between(0.5, 1.5);
                break;
            case EdgingKind.FlatPiping:
                edging["depth"] = sizes.Between(0.125, 0.375);
                break;
            case EdgingKind.Fringe:
                edging["attached"] = sizes.Pick("sewn-in", "sewn-on");
                break;
            case EdgingKind.LipCord:
                edging["cordDiameter"] = sizes.Between(0.25, 0.5);
                break;
            case EdgingKind.Topstitched:
                edging["distance"] = sizes.Between(0.125, 0.5);
                edging["rows"] = sizes.Whole(1, 2);
                break;
        }

        return edging;
    }

    /// <summary>Adds some of what a construction takes besides: ties, straps, tufts, a pocket, a base, eyelets, a handle.</summary>
    public static void Additions(JsonObject cushion, ConstructionOffer offer, Sizes sizes)
    {
        foreach (AdditionKind kind in offer.Additions.Where(_ => sizes.Chance(15)))
        {
            (string field, JsonNode value) = kind switch
            {
                AdditionKind.Ties => (
                    "ties",
                    new JsonObject
                    {
                        ["pairs"] = sizes.Whole(1, 3),
                        ["length"] = sizes.Between(8, 14),
                        ["make"] = sizes.Pick("folded", "tube"),
                    }
                ),
                AdditionKind.Straps => (
                    "straps",
                    new JsonObject { ["count"] = sizes.Whole(1, 3), ["make"] = sizes.Pick("folded", "tube") }
                ),
                AdditionKind.Tufts => (
                    "tufts",
                    new JsonObject
                    {
                        ["rows"] = sizes.Whole(1, 3),
                        ["columns"] = sizes.Whole(1, 4),
                        ["grid"] = sizes.Pick("square", "diamond"),
                        ["covered"] = sizes.Chance(40),
                        ["pullDepth"] = offer.Thickness && sizes.Chance(40) ? sizes.Of(0.5) : 0,
                    }
                ),
                AdditionKind.Pocket => (
                    "pocket",
                    new JsonObject
                    {
                        ["side"] = sizes.Pick("left", "right", "front"),
                        ["width"] = sizes.Between(3, 6),
                        ["height"] = sizes.Between(1, 2),
                    }
                ),
                AdditionKind.Base => ("base", (JsonNode)"anti-slip"),
                _ => ("vents", (JsonNode)sizes.Whole(1, 4)),
            };
            cushion[field] = value;
        }

        if (!offer.Handles.IsEmpty && sizes.Chance(15))
        {
            double span = sizes.Between(5, 8);
            cushion["handle"] = new JsonObject
            {
                ["kind"] = Words<HandleKind>.Of(sizes.Pick([.. offer.Handles])),
                ["sides"] = sizes.Chance(30) ? new JsonArray("left", "right") : new JsonArray(sizes.Pick("front", "left", "right")),
                ["width"] = sizes.Of(1),
                ["length"] = span + sizes.Of(0.75),
                ["span"] = span,
            };
        }
    }

    /// <summary>A fill that goes with the construction; null for none.</summary>
    /// <param name="offer">What the construction takes.</param>
    /// <param name="outline">The outline.</param>
    /// <param name="stocked">Whether the order has stocks.</param>
    /// <param name="thickness">Of the cushion, in the order's units; null where it has none.</param>
    /// <param name="sizes">Chooses.</param>
    public static JsonObject? Fill(ConstructionOffer offer, OutlineKind outline, bool stocked, double? thickness, Sizes sizes)
    {
        bool formed =
            offer.Kind is not (Construction.Wedge or Construction.Pouf or Construction.Bolster)
            && outline is OutlineKind.Rectangle or OutlineKind.Circle;
        return sizes.Whole(0, 5) switch
        {
            0 when thickness is { } thick && offer.Kind is not Construction.Wedge => BuiltUp(stocked, thick, sizes),
            0 or 1 when offer.HasBlock => Foam(stocked, sizes),
            2 when formed => new JsonObject { ["kind"] = "form", ["fullness"] = sizes.Pick("soft", "medium", "plump") },
            3 or 4 => new JsonObject { ["kind"] = "loose", ["material"] = sizes.Pick("polyester-fibre", "feather", "shredded-foam") },
            _ => null,
        };
    }

    // A soft layer over a core, with a crown where the outline may take one.
    private static JsonObject BuiltUp(bool stocked, double thickness, Sizes sizes)
    {
        double soft = sizes.Of(1);
        JsonObject top = new() { ["thickness"] = soft, ["density"] = 30 },
            core = new() { ["thickness"] = thickness - soft, ["density"] = 40 };
        if (stocked)
        {
            (top["stock"], core["stock"]) = ("foam-1", "foam-2");
        }

        JsonObject foam = new() { ["kind"] = "foam", ["layers"] = new JsonArray(top, core) };
        if (sizes.Chance(40))
        {
            foam["crown"] = sizes.Of(1);
        }

        if (sizes.Chance(40))
        {
            foam["wrap"] = new JsonObject { ["sides"] = "whole-skin" };
        }

        return foam;
    }

    private static JsonObject Foam(bool stocked, Sizes sizes)
    {
        JsonObject foam = new() { ["kind"] = "foam" };
        if (stocked)
        {
            foam["stock"] = $"foam-{sizes.Whole(1, 4)}";
        }

        if (sizes.Chance(60))
        {
            foam["density"] = sizes.Whole(20, 60);
        }

        if (sizes.Chance(40))
        {
            foam["wrap"] = new JsonObject
            {
                ["sides"] = sizes.Pick("three-sides", "four-sides", "whole-skin"),
                ["layers"] = sizes.Whole(1, 2),
            };
        }

        return foam;
    }
}
