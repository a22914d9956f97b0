using CushionService.Tests.Hosting;

namespace CushionService.Tests.Contract;

/// <summary>The document in the repository is the one that the service serves.</summary>
public sealed class DriftTests(RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task The_document_in_the_repository_is_the_one_that_is_served()
    {
        string served = await service.Http.GetStringAsync("/openapi/v1.json");

        Assert.Equal(Repository.Read("openapi", "v1.json").TrimEnd(), served.TrimEnd());
    }
}
