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

    [Fact]
    public async Task The_document_is_not_sent_again_to_a_caller_that_holds_it()
    {
        using HttpResponseMessage first = await service.Http.GetAsync(new Uri("/openapi/v1.json", UriKind.Relative));
        using HttpRequestMessage again = new(HttpMethod.Get, "/openapi/v1.json");
        again.Headers.IfNoneMatch.Add(first.Headers.ETag!);
        using HttpResponseMessage second = await service.Http.SendAsync(again);
        using HttpRequestMessage head = new(HttpMethod.Head, "/openapi/v1.json");
        using HttpResponseMessage third = await service.Http.SendAsync(head);

        Assert.Equal(System.Net.HttpStatusCode.NotModified, second.StatusCode);
        Assert.Equal(System.Net.HttpStatusCode.OK, third.StatusCode);
        Assert.Equal(first.Headers.ETag, third.Headers.ETag);
    }

    [Fact]
    public async Task Unknown_parameters_of_an_estimate_are_not_answered_with_many_times_what_was_sent()
    {
        string query = string.Join('&', Enumerable.Range(0, 500).Select(number => $"p{number}"));

        using HttpResponseMessage response = await service.Http.GetAsync(new Uri("/v1/estimate?" + query, UriKind.Relative));
        byte[] answer = await response.Content.ReadAsByteArrayAsync();

        Assert.Equal(System.Net.HttpStatusCode.UnprocessableEntity, response.StatusCode);
        Assert.InRange(answer.Length, 1, 5 * query.Length);
    }
}
