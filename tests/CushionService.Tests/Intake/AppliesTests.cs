using CushionService.Tests.Orders;

namespace CushionService.Tests.Intake;

/// <summary>A field that means nothing where it is gets one violation, whatever else is wrong with it.</summary>
public sealed class AppliesTests
{
    [Theory]
    [InlineData("""{ "/cushions/1/closure/tapeWidth": 99 }""", "/cushions/1/closure/tapeWidth")]
    [InlineData("""{ "/cushions/1/closure/lap": "wide" }""", "/cushions/1/closure/lap")]
    [InlineData("""{ "/cushions/1/thickness": -1 }""", "/cushions/1/thickness")]
    [InlineData("""{ "/cushions/1/pocket": { "side": "bottom", "width": 99, "fabric": "velvet" } }""", "/cushions/1/pocket")]
    [InlineData("""{ "/cushions/1/flange": { "width": 99, "turning": 1 } }""", "/cushions/1/flange")]
    [InlineData("""{ "/cushions/0/outline/sideCount": 99 }""", "/cushions/0/outline/sideCount")]
    [InlineData("""{ "/fabrics/0/onHand": [ { "width": -1 } ] }""", "/fabrics/0/onHand")]
    public void It_is_reported_once(string changes, string pointer) =>
        Assert.Equal([$"{pointer} not-applicable"], SampleOrder.Validate(changes).Violations.Select(SampleOrder.Written));

    [Fact]
    public void Its_neighbours_are_reported_as_ever() =>
        Assert.Equal(
            ["/cushions/1/closure/fold out-of-range 0.125..3", "/cushions/1/closure/tapeWidth not-applicable"],
            SampleOrder
                .Validate("""{ "/cushions/1/closure/tapeWidth": 99, "/cushions/1/closure/fold": 9 }""")
                .Violations.Select(SampleOrder.Written)
        );
}
