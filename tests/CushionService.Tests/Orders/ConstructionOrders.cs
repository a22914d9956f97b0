using System.Text.Json.Nodes;

namespace CushionService.Tests.Orders;

/// <summary>A sound order for each construction and each of its forms: cushions for the reading nook of a small library.</summary>
internal static class ConstructionOrders
{
    private const string Rectangle = """ "outline": { "kind": "rectangle", "width": 24, "depth": 20 } """;
    private const string Circle = """ "outline": { "kind": "circle", "diameter": 20 } """;
    private const string Zipper = """ "closure": { "kind": "zipper" } """;
    private const string ByHand = """ "closure": { "kind": "hand-sewn" } """;
    private const string Foam = """ "fill": { "kind": "foam", "density": 30 } """;
    private const string Loose = """ "fill": { "kind": "loose" } """;

    public static IReadOnlyList<(string Name, string Cushion)> All { get; } =
    [
        ("wedge", $""" "construction": "wedge", {Rectangle}, "thickness": 6, "frontThickness": 2, {Zipper}, {Foam} """),
        ("wedge-sharp", $""" "construction": "wedge", {Rectangle}, "thickness": 6, "closure": {Envelope("3")}, {Foam} """),
        ("waterfall", $""" "construction": "waterfall", {Rectangle}, "thickness": 4, {Zipper}, {Foam} """),
        (
            "waterfall-bull-nose",
            $""" "construction": "waterfall", {Rectangle}, "thickness": 4, "front": "bull-nose", "closure": {Hook("1/2")}, {Foam} """
        ),
        ("mitred", $""" "construction": "mitred", {Rectangle}, "thickness": 4, {Zipper}, {Foam} """),
        ("gathered-corner", $""" "construction": "gathered-corner", {Rectangle}, "thickness": 4, {Zipper}, {Loose} """),
        (
            "bolster",
            """ "construction": "bolster", "outline": { "kind": "circle", "diameter": 8 }, "length": 24, "closure": { "kind":"""
                + """ "zipper" }, "fill": { "kind": "foam", "density": 30 } """
        ),
        (
            "bolster-gathered",
            $$""" "construction": "bolster", "outline": { "kind": "circle", "diameter": 6 }, "length": 16, "ends": { "kind":"""
                + $$""" "gathered", "turning": 1 }, {{ByHand}} """
        ),
        (
            "bolster-tied",
            $$""" "construction": "bolster", "outline": { "kind": "circle", "diameter": 6 }, "length": 16, "ends": { "kind": "tied","""
                + $$""" "tail": 7 }, {{Zipper}} """
        ),
        (
            "bolster-half",
            $$""" "construction": "bolster", "outline": { "kind": "half-round", "width": 10 }, "length": 24, {{Zipper}}, {{Foam}} """
        ),
        ("flanged", $$""" "construction": "flanged", {{Rectangle}}, "flange": { "width": 2 }, "closure": {{Envelope("4")}}, {{Loose}} """),
        (
            "flanged-double",
            $$""" "construction": "flanged", {{Rectangle}}, "flange": { "layers": "double", "width": 2, "turning": "3/8" },"""
                + $$""" "closure": { "kind": "zipper", "side": "bottom" } """
        ),
        ("pouf-drum", $""" "construction": "pouf", {Circle}, "thickness": 12, {Zipper}, {Loose} """),
        (
            "pouf-gored",
            $""" "construction": "pouf", {Circle}, "thickness": 12, "gores": 8, "closure": {Hook("1/2", "\"overlap\": 2,")}, {Loose} """
        ),
        ("boxed-round", $""" "construction": "boxed", {Circle}, "thickness": 3, {Zipper}, {Foam} """),
        (
            "boxed-channels",
            $$""" "construction": "boxed", {{Rectangle}}, "thickness": 3, "channels": { "count": 4, "crown": 1 }, {{Zipper}}, {{Foam}} """
        ),
        (
            "boxed-bay",
            $$""" "construction": "boxed", "outline": { "kind": "trapezoid", "frontWidth": 30, "backWidth": 20, "depth": 16,"""
                + $$""" "backOffset": 2 }, "thickness": 3, {{ByHand}} """
        ),
        (
            "knife-edge-tapered",
            $$""" "construction": "knife-edge", {{Rectangle}}, "cornerTaper": "1/2", "innerCover": { "fabric": "calico" },"""
                + $$""" {{Zipper}}, {{Loose}} """
        ),
    ];

    public static JsonObject Of(string cushion) =>
        JsonNode
            .Parse(
                $$"""
                { "units": "in", "effort": "quick",
                  "cushions": [ { "id": "nook", "fabrics": { "top": "main" }, {{cushion}} } ],
                  "fabrics": [ { "id": "main", "width": 60, "sold": { "unit": "yd", "step": "1/8" } }, { "id": "calico", "width": 60,
                    "sold": { "unit": "yd", "step": "1/8" } } ] }
                """
            )!
            .AsObject();

    private static string Envelope(string overlap) => $$"""{ "kind": "envelope", "overlap": {{overlap}} }""";

    private static string Hook(string fold, string more = "") => $$"""{ "kind": "hook-and-loop", {{more}} "fold": "{{fold}}" }""";
}
