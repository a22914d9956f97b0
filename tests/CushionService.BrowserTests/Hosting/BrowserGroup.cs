namespace CushionService.BrowserTests.Hosting;

/// <summary>The tests that share one browser and one service, one after the other.</summary>
[CollectionDefinition(Name)]
public sealed class BrowserGroup : ICollectionFixture<BrowserOfThisMachine>
{
    public const string Name = "browser";
}
