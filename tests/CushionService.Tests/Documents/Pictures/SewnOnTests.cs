using System.Net.Http.Headers;
using System.Text;
using CushionService.Tests.Hosting;
using CushionService.Tests.Orders;

namespace CushionService.Tests.Documents.Pictures;

/// <summary>What is sewn to a cushion is in its pictures, whole and apart.</summary>
public sealed class SewnOnTests(RunningService service) : IClassFixture<RunningService>
{
    private const string Boxed =
        """ "construction": "boxed", "outline": { "kind": "rectangle", "width": 20, "depth": 18 }, "thickness": 3, """
        + """ "closure": { "kind": "zipper", "side": "back" } """;

    private const string Pillow =
        """ "construction": "knife-edge", "outline": { "kind": "rectangle", "width": 18, "depth": 18 }, "closure": { "kind": "zipper" } """;

    // Nothing else of the cushion is of the second fabric, so its colour shows that the part is drawn.
    [Theory]
    [InlineData(Boxed, """ "edging": { "kind": "welt", "at": ["top"], "cordDiameter": "5/32", "fabric": "calico" } """)]
    [InlineData(Boxed, """ "edging": { "kind": "flat-piping", "at": ["top"], "fabric": "calico" } """)]
    [InlineData(Pillow, """ "edging": { "kind": "ruffle", "at": ["top"], "depth": 3, "fabric": "calico" } """)]
    [InlineData(Boxed, """ "ties": { "pairs": 2, "side": "back", "length": 12, "width": "1/2", "make": "folded", "fabric": "calico" } """)]
    [InlineData(
        Boxed,
        """ "handle": { "kind": "folded-strap", "side": "front", "width": 1, "length": 9, "span": 8, "fabric": "calico" } """
    )]
    public async Task Edgings_ties_and_handles_are_on_the_pieces_that_are_drawn_apart(string cushion, string sewnOn)
    {
        Assert.Contains("--cushion-fabric-2", await DrawnAsync("exploded", $"{cushion}, {sewnOn}"), StringComparison.Ordinal);
        Assert.DoesNotContain("--cushion-fabric-2", await DrawnAsync("exploded", cushion), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("finished", Pillow, """ "cornerTaper": "1/2" """)]
    [InlineData("exploded", Pillow, """ "cornerTaper": "1/2" """)]
    [InlineData("finished", Boxed, """ "base": "anti-slip" """)]
    [InlineData("exploded", Boxed, """ "base": "anti-slip" """)]
    public async Task Tapered_corners_and_the_studs_of_a_base_are_drawn(string view, string cushion, string drawn)
    {
        int without = Lines(await DrawnAsync(view, cushion)),
            with = Lines(await DrawnAsync(view, $"{cushion}, {drawn}"));

        // A line a corner at least; an anti-slip base has many studs.
        Assert.True(with >= without + 4, $"{without} lines without, {with} with it.");
    }

    private static int Lines(string picture) => picture.Count(sign => sign == 'M');

    private async Task<string> DrawnAsync(string view, string cushion)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri($"/v1/pictures?view={view}", UriKind.Relative))
        {
            Content = new StringContent(ConstructionOrders.Of(cushion).ToJsonString(), Encoding.UTF8, "application/json"),
        };
        request.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue("image/svg+xml"));
        using HttpResponseMessage response = await service.Http.SendAsync(request);
        string picture = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, picture);
        return picture;
    }
}
