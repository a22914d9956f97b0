using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using CushionService.Documents.Drawings;
using CushionService.Documents.Pictures;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Documents.Pictures;

/// <summary>Nothing on paper depends on colour alone: printed in greys, it says the same.</summary>
public sealed class BlackAndWhiteTests(RunningService service) : IClassFixture<RunningService>
{
    // Contrast of lines and small type with what is behind them: Web Content Accessibility Guidelines 2.2, 1.4.11 and 1.4.3.
    private const double OfLines = 3;
    private const double OfType = 4.5;

    public static TheoryData<string, string, double> Inks =>
        new()
        {
            { "ink", Stroke.Ink, OfType },
            { "cut", Stroke.Cut.Colour, OfLines },
            { "mark", Stroke.Mark.Colour, OfLines },
            { "fine", Stroke.Fine.Colour, OfLines },
            { "lattice", Stroke.Lattice.Colour, OfLines },
            { "torn", Stroke.Torn.Colour, OfLines },
            { "line", Tint.Line.Value, OfType },
            { "print", Tint.Print.Value, OfLines },
            { "accent", Tint.Accent.Value, OfLines },
        };

    [Theory]
    [MemberData(nameof(Inks))]
    public void Every_line_is_dark_enough_on_white_paper(string line, string colour, double least) =>
        Assert.True(1.05 / (new Tint("", Whole(colour)).Grey + 0.05) >= least, $"{line} {colour}");

    // A red and a green of the same grey, then a dark blue: only the first two need a hatch.
    [Theory]
    [InlineData("#b04040", "#3f7f3f", true)]
    [InlineData("#d9e4dd", "#d9e4dd", true)]
    [InlineData("#f2efe6", "#20304f", false)]
    [InlineData(null, null, true)]
    public async Task Fabrics_of_one_grey_are_told_apart_by_a_hatch(string? first, string? second, bool hatched)
    {
        int both = Lines(await DrawnAsync(first, second)),
            one = Lines(await DrawnAsync("#ffffff", "#000000"));

        Assert.Equal(hatched, both > one);
    }

    private static string Whole(string colour) =>
        colour.Length == 4 ? $"#{colour[1]}{colour[1]}{colour[2]}{colour[2]}{colour[3]}{colour[3]}" : colour;

    private static int Lines(string picture) => picture.Count(sign => sign == 'M');

    private async Task<string> DrawnAsync(string? first, string? second)
    {
        JsonObject order = JsonNode
            .Parse(
                """
                { "units": "in", "cushions": [{ "id": "c", "construction": "knife-edge", "outline": { "kind": "rectangle", "width": 18,
                  "depth": 18 }, "closure": { "kind": "zipper" }, "fabrics": { "top": "b", "bottom": "a" } }],
                  "fabrics": [
                    { "id": "a", "width": 54, "sold": { "unit": "yd", "step": 0.125 } },
                    { "id": "b", "width": 54, "sold": { "unit": "yd", "step": 0.125 } }
                  ] }
                """
            )!
            .AsObject();
        order["fabrics"]![0]!["colour"] = first;
        order["fabrics"]![1]!["colour"] = second;
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri("/v1/pictures", UriKind.Relative))
        {
            Content = new StringContent(order.ToJsonString(), Encoding.UTF8, "application/json"),
        };
        request.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue("image/svg+xml"));
        using HttpResponseMessage response = await service.Http.SendAsync(request);
        string picture = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, picture);
        return picture;
    }
}
