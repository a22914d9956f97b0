namespace CushionService.Tests.Orders;

/// <summary>One order for each rule of openings and handles, broken in that way alone.</summary>
public sealed class OpeningRuleTests
{
    private const string Handle = "\"kind\": \"webbing\", \"width\": 1, \"length\": 9, \"span\": 8";

    [Theory]
    [InlineData(0, "handle", "{ " + Handle + """, "sides": ["left", "left"] }""", "/sides duplicate")]
    [InlineData(0, "handle", "{ " + Handle + """, "sides": ["left", "back"] }""", "/sides/1 not-combinable")]
    [InlineData(0, "handle", "{ " + Handle + """, "sides": ["left", "bottom"] }""", "/sides/1 not-combinable")]
    [InlineData(0, "handle", "{ " + Handle + """, "side": "front", "sides": ["left"] }""", "/side not-applicable")]
    [InlineData(1, "closure", """{ "kind": "zipper", "flaps": "long-side" }""", "/flaps not-applicable")]
    [InlineData(1, "closure", """{ "kind": "zipper", "extent": "three-sides" }""", "/extent not-applicable")]
    [InlineData(1, "closure", """{ "kind": "envelope", "extent": "three-sides" }""", "/extent not-applicable")]
    [InlineData(2, "closure", """{ "kind": "zipper", "extent": "three-sides", "return": 2 }""", "/return not-applicable")]
    public void Is_refused(int cushion, string field, string value, string violation) =>
        Assert.Equal([$"/cushions/{cushion}/{field}{violation}"], Violations(cushion, field, value));

    [Theory]
    [InlineData(0, "handle", "{ " + Handle + """, "sides": ["left", "right"] }""")]
    [InlineData(0, "handle", "{ " + Handle + """, "sides": ["right"] }""")]
    [InlineData(1, "closure", """{ "kind": "envelope", "flaps": "short-side" }""")]
    [InlineData(1, "closure", """{ "kind": "envelope", "flaps": "long-side" }""")]
    [InlineData(2, "closure", """{ "kind": "zipper", "extent": "three-sides" }""")]
    [InlineData(2, "closure", """{ "kind": "zipper", "extent": "one-side", "return": 2 }""")]
    [InlineData(2, "channels", """{ "count": 4, "direction": "across" }""")]
    public void Is_taken(int cushion, string field, string value) => Assert.Empty(Violations(cushion, field, value));

    private static IEnumerable<string> Violations(int cushion, string field, string value) =>
        SampleOrder.Validate($$"""{ "/cushions/{{cushion}}/{{field}}": {{value}} }""").Violations.Select(SampleOrder.Written);
}
