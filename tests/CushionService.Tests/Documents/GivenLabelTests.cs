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

    // A name from right to left lies between the signs of an isolate; the part is in the reader's words beside any name.
    [Theory]
    [InlineData("en", "Window seat", "boxing (panel 1)")]
    [InlineData("de", "Window seat", "Steg (Bahn 1)")]
    [InlineData("de", "כרית", "Steg (Bahn 1)")]
    [InlineData("fr", "כרית", "plate-bande (lé 1)")]
    public async Task A_printed_label_of_a_piece_names_its_part_in_the_readers_words(string language, string name, string part)
    {
        string paper = await Send("labels", "text/html", Order.Replace("Window seat", name, StringComparison.Ordinal), language);

        Assert.Contains($">{part}<", paper, StringComparison.Ordinal);
        Assert.DoesNotContain(">boxing-1<", paper, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("en", "Piece Window seat, top is 71 in wide")]
    [InlineData("de", "„Window seat, Oberseite“")]
    [InlineData("fr", "«\u00a0Window seat, dessus\u00a0»")]
    [InlineData("es", "«Window seat, cara superior»")]
    public async Task A_warning_names_a_piece_in_the_readers_words(string language, string expected)
    {
        // A circle cannot be joined: one face of 71 in across 54.
        string answer = await Send(
            "validations",
            "application/json",
            Order.Replace(
                "\"kind\": \"rectangle\", \"width\": 24, \"depth\": 22",
                "\"kind\": \"circle\", \"diameter\": 70",
                StringComparison.Ordinal
            ),
            language
        );

        Assert.Contains(expected, System.Text.RegularExpressions.Regex.Unescape(answer), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("\\n")]
    public async Task A_blank_label_is_none(string label)
    {
        string answer = await Send("pieces", "application/json", Order.Replace("Window seat", label, StringComparison.Ordinal), "en");

        Assert.DoesNotContain(", top", answer, StringComparison.Ordinal);
    }

    private async Task<string> Send(string call, string type, string order, string language)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri($"/v1/{call}", UriKind.Relative))
        {
            Content = new StringContent(order, Encoding.UTF8, "application/json"),
        };
        request.Headers.Accept.ParseAdd(type);
        request.Headers.AcceptLanguage.ParseAdd(language);
        using HttpResponseMessage response = await service.Http.SendAsync(request);
        return System.Net.WebUtility.HtmlDecode(await response.Content.ReadAsStringAsync());
    }
}
