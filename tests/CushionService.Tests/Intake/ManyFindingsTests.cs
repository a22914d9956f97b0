using CushionService.Tests.Orders;

namespace CushionService.Tests.Intake;

/// <summary>Of an order with more violations than anybody reads, as many are listed as of a text full of unknown fields.</summary>
public sealed class ManyFindingsTests
{
    [Fact]
    public void The_first_thousand_are_listed()
    {
        string cushions = string.Join(',', Enumerable.Repeat("{}", 300));

        Assert.Equal(1000, SampleOrder.Validate($$"""{ "/cushions": [{{cushions}}] }""").Violations.Count);
    }
}
