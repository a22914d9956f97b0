using CushionService.Intake;

namespace CushionService.Tests.Intake;

/// <summary>Problems are listed as a reader counts.</summary>
public sealed class PointerOrderTests
{
    [Fact]
    public void Entries_are_counted_and_not_spelled()
    {
        string[] ordered =
        [
            "",
            "/cushions",
            "/cushions/0/outline/points/9/x",
            "/cushions/0/outline/points/10/x",
            "/cushions/2",
            "/cushions/2/closure",
            "/cushions/10",
            "/fabrics/0/id",
        ];

        Assert.Equal(ordered, ordered.Reverse().Order(PointerOrder.Instance));
    }
}
