using System.Net.Http.Headers;
using System.Text;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Documents;

/// <summary>Drawings and papers call cushions and fabrics what the order calls them, and not by the ids that its programs use.</summary>
public sealed class GivenLabelTests(RunningService service) : IClassFixture<RunningService>
{
    private const string Order = """
        {
          "units": "in", "effort": "quick",
          "cushions": [{
            "id": "q7", "label": "Window seat", "construction": "boxed", "outline": { "kind": "rectangle", "width": 24, "depth": 22 },
            "thickness": 3, "closure": { "kind": "zipper", "side": "back" }
          }],
          "fabrics": [{
            "id": "m1", "label": "Leaf print", "width": 54, "shrinkage": { "length": 0 }, "sold": { "unit": "yd", "step": "1/8" }
          }]
        }
        """;

    [Theory]
    [InlineData("layouts?fabric=m1", "image/svg+xml", "Window seat, top")]
    [InlineData("quotes?detail=full", "text/html", "Window seat, top")]
    [InlineData("quotes", "text/html", "Leaf print")]
    [InlineData("labels", "text/html", "Leaf print")]
    [InlineData("pieces", "text/html", "Leaf print")]
    public async Task The_label_that_was_given_is_in_place_of_the_id(string call, string type, string expected)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri($"/v1/{call}", UriKind.Relative))
        {
            Content = new StringContent(Order, Encoding.UTF8, "application/json"),
        };
        request.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue(type));
        using HttpResponseMessage response = await service.Http.SendAsync(request);
        string paper = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, paper);
        Assert.Contains(expected, paper, StringComparison.Ordinal);
        Assert.DoesNotContain(">q7", paper, StringComparison.Ordinal);
        Assert.DoesNotContain(": q7/", paper, StringComparison.Ordinal);
        Assert.DoesNotContain(">m1<", paper, StringComparison.Ordinal);
    }
}
