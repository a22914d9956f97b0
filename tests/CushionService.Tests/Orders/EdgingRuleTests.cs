namespace CushionService.Tests.Orders;

/// <summary>One order for each rule of an edging, broken in that way alone.</summary>
public sealed class EdgingRuleTests
{
    [Theory]
    [InlineData("""{ "kind": "welt", "attached": "sewn-in" }""", "attached not-applicable")]
    [InlineData("""{ "kind": "lip-cord", "depth": 1 }""", "depth not-applicable")]
    [InlineData("""{ "kind": "lip-cord", "fabric": "trim" }""", "fabric not-applicable")]
    [InlineData("""{ "kind": "flat-piping", "cordDiameter": 1 }""", "cordDiameter not-applicable")]
    [InlineData("""{ "kind": "gimp", "cut": "bias" }""", "cut not-applicable")]
    [InlineData("""{ "kind": "topstitched", "depth": 1 }""", "depth not-applicable")]
    [InlineData("""{ "kind": "fringe", "rows": 2 }""", "rows not-applicable")]
    [InlineData("""{ "kind": "lip-cord", "attached": "sewn-on" }""", "attached not-combinable")]
    [InlineData("""{ "kind": "gimp", "attached": "sewn-in" }""", "attached not-combinable")]
    [InlineData("""{ "kind": "fringe", "depth": "1/4" }""", "depth out-of-range 0.5..")]
    [InlineData("""{ "kind": "ruffle", "depth": "1/4" }""", "depth out-of-range 0.5..")]
    [InlineData("""{ "kind": "gimp", "depth": 3 }""", "depth out-of-range ..2")]
    [InlineData("""{ "kind": "flat-piping", "depth": 3 }""", "depth out-of-range ..2")]
    [InlineData("""{ "kind": "flat-piping", "at": ["corners"] }""", "at/0 not-combinable")]
    [InlineData("""{ "kind": "topstitched", "rows": 3 }""", "rows out-of-range 1..2")]
    [InlineData("""{ "kind": "topstitched", "distance": 1 }""", "distance out-of-range ..0.5")]
    [InlineData("""{ "kind": "topstitched", "distance": "3/8", "rows": 2 }""", "distance out-of-range ..0.25")]
    [InlineData("""{ "kind": "french-seam" }""", "kind not-combinable")]
    public void Of_a_boxed_cushion(string edging, string violation) => Breaks(0, $$"""{ "edging": {{edging}} }""", $"edging/{violation}");

    [Theory]
    [InlineData("""{ "edging": { "kind": "french-seam" }, "seamAllowance": "1/4" }""", "seamAllowance out-of-range 0.375..")]
    [InlineData("""{ "edging": { "kind": "french-seam" }, "closure": { "kind": "hand-sewn" } }""", "edging/kind not-combinable")]
    [InlineData("""{ "edging": { "kind": "french-seam" }, "ties": { "pairs": 1, "length": 10 } }""", "edging/kind not-combinable")]
    public void Of_a_knife_edge(string fields, string violation) => Breaks(1, fields, violation);

    // An allowance deep enough to be stitched to lies beside the edging's own; channels are stitched after the corners are cut.
    [Theory]
    [InlineData("welt", "closure/lap not-combinable")]
    [InlineData("flange", "closure/lap not-combinable")]
    [InlineData("lip-cord", "closure/lap not-combinable")]
    [InlineData("fringe", "closure/lap not-combinable")]
    [InlineData("gimp", null)]
    [InlineData("topstitched", null)]
    public void A_lap_over_a_zipper_in_the_same_seam(string kind, string? violation)
    {
        string depth = kind == "flange" ? """, "depth": 2""" : "",
            edging = $$"""{ "kind": "{{kind}}"{{depth}} }""",
            closure = """{ "kind": "zipper", "lap": "1/2" }""";
        IEnumerable<string> broken = SampleOrder
            .Validate($$"""{ "/cushions/1/edging": {{edging}}, "/cushions/1/closure": {{closure}} }""")
            .Violations.Select(SampleOrder.Written);

        Assert.Equal(violation is null ? [] : [$"/cushions/1/{violation}"], broken);
    }

    [Fact]
    public void A_taper_beside_channels() =>
        Breaks(1, """{ "cornerTaper": "1/2", "channels": { "count": 4 } }""", "cornerTaper not-combinable");

    [Theory]
    [InlineData(0, """{ "kind": "flat-piping", "depth": "1/4", "cut": "lengthwise", "fabric": "trim" }""")]
    [InlineData(0, """{ "kind": "fringe", "attached": "sewn-on", "at": ["bottom"] }""")]
    [InlineData(0, """{ "kind": "gimp", "depth": "5/8", "attached": "sewn-on" }""")]
    [InlineData(0, """{ "kind": "lip-cord", "cordDiameter": "10 mm" }""")]
    [InlineData(0, """{ "kind": "topstitched", "rows": 2 }""")]
    [InlineData(1, """{ "kind": "topstitched", "distance": "6 mm", "rows": 2 }""")]
    [InlineData(1, """{ "kind": "topstitched", "distance": 1 }""")]
    [InlineData(1, """{ "kind": "french-seam" }""")]
    public void Is_taken(int cushion, string edging) =>
        Assert.Empty(SampleOrder.Validate($$"""{ "/cushions/{{cushion}}/edging": {{edging}} }""").Violations);

    private static void Breaks(int cushion, string fields, string violation) =>
        Assert.Equal(
            [$"/cushions/{cushion}/{violation}"],
            SampleOrder
                .Validate(
                    new System.Text.Json.Nodes.JsonObject(
                        System
                            .Text.Json.Nodes.JsonNode.Parse(fields)!
                            .AsObject()
                            .Select(field => KeyValuePair.Create($"/cushions/{cushion}/{field.Key}", field.Value?.DeepClone()))
                    ).ToJsonString()
                )
                .Violations.Select(SampleOrder.Written)
        );
}
