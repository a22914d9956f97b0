using System.Net.Http.Headers;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Pages;

/// <summary>The picture in the README is the drawing that the service makes of the reading nook's canvas.</summary>
public sealed class PictureTests(RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task The_picture_is_drawn_by_the_service()
    {
        using HttpRequestMessage request = new(HttpMethod.Post, "/v1/layouts?fabric=canvas");
        request.Content = new StringContent(Repository.Read("src/CushionService/Demo/reading-nook.json"), null, "application/json");
        request.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue("image/svg+xml"));
        using HttpResponseMessage response = await service.Http.SendAsync(request);

        Assert.True(response.IsSuccessStatusCode);
        WrittenPart.WholeIsUpToDate("src/CushionService/docs/reading-nook.svg", await response.Content.ReadAsStringAsync());
    }
}
