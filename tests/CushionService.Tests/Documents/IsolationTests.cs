using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using CushionService.Documents;
using CushionService.Documents.Drawings;
using CushionService.Documents.Pdf;
using CushionService.Tests.Hosting;
using CushionService.Tests.Orders;

namespace CushionService.Tests.Documents;

/// <summary>A name that reads from right to left leaves the figures beside it as they are, in every form of document.</summary>
public sealed class IsolationTests(RunningService service) : IClassFixture<RunningService>
{
    private const string Svg = "image/svg+xml";

    // With a bracket and a figure of its own.
    private const string Name = "כרית (צד) 3";

    [Theory]
    [InlineData("text/html")]
    [InlineData("text/csv")]
    [InlineData(Svg)]
    public async Task A_document_has_no_sign_in_place_of_an_isolate(string form)
    {
        JsonObject order = JsonNode.Parse(SampleOrder.Text)!.AsObject();
        order["cushions"]![0]!["label"] = Name;
        order["fabrics"]![0]!["label"] = Name;
        using HttpRequestMessage request = new(
            HttpMethod.Post,
            new Uri(form == Svg ? $"/v1/layouts?fabric={order["fabrics"]![0]!["id"]}" : "/v1/quotes", UriKind.Relative)
        )
        {
            Content = new StringContent(order.ToJsonString(), Encoding.UTF8, "application/json"),
        };
        request.Headers.Accept.ParseAdd(form);
        using HttpResponseMessage response = await service.Http.SendAsync(request);
        string text = WebUtility.HtmlDecode(await response.Content.ReadAsStringAsync());

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Contains(Name, text, StringComparison.Ordinal);
        Assert.DoesNotContain('\uFFFD', text);
        Assert.Equal(text.Count(letter => letter == Isolation.Start), text.Count(letter => letter == Isolation.End));
        if (form != Svg)
        {
            Assert.Contains($"\u2068{Name}\u2069", text, StringComparison.Ordinal);
        }
    }

    // What an isolate bounds cannot turn what is outside it; every other sign of direction is the caller's.
    [Theory]
    [InlineData("\u2068כר\u2069 1", "\u2068כר\u2069 1")]
    [InlineData("\u2068\u2068כר\u2069: 2\u2069 1", "\u2068\u2068כר\u2069: 2\u2069 1")]
    [InlineData("\u2069כר\u2068 1", "כר 1")]
    [InlineData("\u2068plain\u2069 1", "plain 1")]
    [InlineData("\u2068כר", "כר")]
    [InlineData("\u202Eכר\u202C \u2066x\u2069 \u2067y", "\uFFFDכר\uFFFD \uFFFDx \uFFFDy")]
    public void Signs_of_direction_stay_only_as_pairs_that_isolate_a_name(string text, string expected) =>
        Assert.Equal(expected, PrintableText.Of(text));

    // Unicode Standard Annex 9, rules N0, L2 and L4: what is inside an isolate is turned by itself, with its brackets.
    [Theory]
    [InlineData("\u2068כר\u2069 1 × 0.643 ft³ × 0.9", "רכ 1 × 0.643 ft³ × 0.9")]
    [InlineData("0.9 × \u2068כר (צד) 3\u2069 × 12 1/2", "0.9 × 3 (דצ) רכ × 12 1/2")]
    [InlineData("\u2068כר A 0.643\u2069, \u2068צד\u2069", "A 0.643 רכ, דצ")]
    [InlineData("\u2068A כר\u2069 7", "A רכ 7")]
    [InlineData("\u2068\u2068כר\u2069: top\u2069 7", "רכ: top 7")]
    [InlineData("\u2068plain\u2069 7", "plain 7")]
    public void A_page_shows_figures_beside_a_name_in_their_order(string text, string expected) =>
        Assert.Equal(expected, ReadingOrder.Of(text));

    [Fact]
    public void A_name_that_is_broken_or_cut_short_is_isolated_on_each_line()
    {
        string text = "1 × \u2068כרית לספסל הקריאה שליד החלון\u2069 × 0.9";
        Assert.Equal(
            TextWidth.Of(text),
            TextWidth.Of(text.Replace("\u2068", "", StringComparison.Ordinal).Replace("\u2069", "", StringComparison.Ordinal))
        );
        Assert.All(TextWrap.Lines(text, 12), Balanced);
        Balanced(TextWidth.Shorten(text, 12));
        Assert.All(
            CushionService.Documents.Sheets.LineBreaks.Of([new(text)], 9).SelectMany(line => line.Parts),
            part => Balanced(part.Run.Text)
        );

        static void Balanced(string line)
        {
            int depth = 0;
            Assert.Equal((line, 0), (Isolation.Line(line, ref depth), depth));
        }
    }
}
