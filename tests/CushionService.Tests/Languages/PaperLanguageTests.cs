using System.Net.Http.Headers;
using System.Text;
using System.Text.RegularExpressions;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Languages;

/// <summary>Everything that is printed is in the reader's language: what paper calls pieces, units, amounts and the words of drawings, not
/// only its sentences.</summary>
public sealed partial class PaperLanguageTests(RunningService service) : IClassFixture<RunningService>
{
    // The names are of no language. One cushion has a label, the other is called by its id.
    private const string Order = """
        { "reference": "R1", "units": "in", "currency": "EUR", "cushions": [
          { "id": "k1", "label": "Lk", "construction": "boxed", "outline": { "kind": "round-ended", "width": 30, "depth": 16 },
            "thickness": 3, "closure": { "kind": "zipper" }, "fabrics": { "top": "f1" } },
          { "id": "k2", "construction": "boxed", "outline": { "kind": "tee", "width": 25, "depth": 24, "earDepth": 6, "earWidth": 3 },
            "thickness": 4, "closure": { "kind": "zipper" }, "fabrics": { "top": "f1" }, "quantity": 2 }],
          "fabrics": [{ "id": "f1", "width": 54, "sold": { "unit": "yd", "step": 0.125 },
            "price": { "amount": "18.50", "per": "yd" } }],
          "prices": [
            { "item": "zipper", "amount": "1.20", "per": "yd" },
            { "item": "thread", "amount": "0.10", "per": "yd" }
          ] }
        """;

    public static TheoryData<string, string> Papers()
    {
        TheoryData<string, string> papers = [];
        foreach (string language in (string[])["de", "fr", "es"])
        {
            foreach (string call in (string[])["quotes", "quotes?detail=full", "quotes?detail=project", "labels", "pieces"])
            {
                papers.Add(language, call);
            }
        }

        return papers;
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task A_paper_has_no_word_of_English(string language, string call)
    {
        string html = await PaperAsync(language, call);
        string[] words = [.. Tags().Split(html).Where(text => text.Trim().Length > 0).Select(System.Net.WebUtility.HtmlDecode)!];

        Assert.Contains($"""<html lang="{language}">""", html, StringComparison.Ordinal);
        Assert.NotEmpty(words);
        Assert.All(words, text => Assert.DoesNotMatch(English(), text));
    }

    // In German "in" is a preposition: "8 in hoch" is no height.
    [Theory]
    [InlineData("quotes")]
    [InlineData("quotes?detail=full")]
    [InlineData("quotes?detail=project")]
    [InlineData("labels")]
    [InlineData("pieces")]
    public async Task A_German_paper_has_inches_by_their_German_name(string call)
    {
        string html = await PaperAsync("de", call);

        Assert.DoesNotMatch(InchSymbol(), html);
        Assert.Contains("\u00a0Zoll", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("de")]
    [InlineData("fr")]
    [InlineData("es")]
    public async Task Amounts_have_the_sign_for_decimals_of_the_language(string language)
    {
        string html = Tags().Replace(await PaperAsync(language, "quotes"), " ");

        Assert.Contains("18,50", html, StringComparison.Ordinal);
        Assert.DoesNotContain("18.50", html, StringComparison.Ordinal);
    }

    // A label is small: a name of sixty letters must not hide what the piece is.
    [Fact]
    public async Task A_label_says_which_part_it_is_however_long_the_name_of_its_cushion_is()
    {
        string html = await PaperAsync("de", "labels", Order.Replace("\"Lk\"", $"\"{new string('L', 60)}\"", StringComparison.Ordinal));

        // The first cushion is made once, the second twice.
        Assert.Equal(3, Regex.Count(html, ">Reißverschlussstreifen oben<"));
        Assert.Equal(3, Regex.Count(html, ">Reißverschlussstreifen unten<"));
        Assert.Contains("L…<", html, StringComparison.Ordinal);
    }

    // Boxing of two panels, and sides that return to the back. An id is for programs: it is in attributes, and people never read it.
    [Theory]
    [InlineData("quotes?detail=full")]
    [InlineData("quotes?detail=project")]
    [InlineData("labels")]
    [InlineData("pieces")]
    public async Task An_English_paper_calls_a_piece_by_one_name(string call)
    {
        string order = Order.Replace(""" "kind": "tee", "width": 25, "depth": 24, "earDepth": 6, "earWidth": 3 """, Seat);
        string html = await PaperAsync("en", call, order);
        string words = Tags().Replace(html, " ");

        Assert.NotEqual(Order, order);
        Assert.DoesNotMatch(JoinedWords(), words);
        if (call != "pieces")
        {
            Assert.Contains("boxing (panel 2)", words, StringComparison.Ordinal);
        }
    }

    // What is bought by the service's own name is in the reader's words, in sentences as in lists.
    [Theory]
    [InlineData("de", "Schaumstoff, 45 cm × 45 cm, 4 cm stark", "Schaumstoff, Klebstoff, Reißverschluss, Knöpfe, Heftgarn, Garn")]
    [InlineData("fr", "mousse, 45 cm sur 45 cm", "mousse, colle, fermeture à glissière, boutons, ficelle, fil")]
    [InlineData("es", "espuma, 45 cm por 45 cm", "espuma, adhesivo, cremallera, botones, bramante, hilo")]
    public async Task What_is_bought_has_no_name_in_English(string language, string step, string bought)
    {
        const string Tufted = """
            { "units": "cm", "currency": "EUR", "cushions": [
              { "id": "k1", "construction": "boxed", "outline": { "kind": "rectangle", "width": 45, "depth": 45 }, "thickness": 8,
                "closure": { "kind": "zipper" }, "tufts": { "columns": 2, "rows": 2 },
                "fabrics": { "top": "f1" }, "fill": { "kind": "foam", "layers": [{ "thickness": 4 }, { "thickness": 4 }] } }],
              "fabrics": [{ "id": "f1", "width": 140, "sold": { "unit": "m", "step": 0.1 }, "price": { "amount": "18.50", "per": "m" } }] }
            """;
        string words = Tags().Replace(await PaperAsync(language, "quotes?detail=full", Tufted), " ").Replace('\u00a0', ' ');

        Assert.Contains(step.Replace('\u00a0', ' '), words, StringComparison.Ordinal);
        Assert.Contains(bought, words, StringComparison.Ordinal);
        Assert.DoesNotMatch(Bought(), words);
    }

    // A word of the service's own says what it is, and a form is no foam.
    [Theory]
    [InlineData("de", "m Abbindeschnur", "m Klettband", "Den Bezug füllen")]
    [InlineData("fr", "m de cordon de ligature", "m de ruban auto-agrippant", "Garnir la housse")]
    [InlineData("es", "m de cordón de atado", "m de cinta de gancho y bucle", "Rellenar la funda")]
    public async Task A_project_sheet_says_once_what_is_bought(string language, string cord, string tape, string filling)
    {
        const string Sweet = """
            { "units": "cm", "cushions": [
              { "id": "k1", "construction": "bolster", "outline": { "kind": "circle", "diameter": 20 }, "length": 50,
                "ends": { "kind": "tied" }, "closure": { "kind": "hook-and-loop" }, "fabrics": { "top": "f1" },
                "fill": { "kind": "form" } }],
              "fabrics": [{ "id": "f1", "width": 140, "sold": { "unit": "m", "step": 0.1 } }] }
            """;
        string html = await PaperAsync(language, "quotes?detail=project", Sweet);
        string words = System.Net.WebUtility.HtmlDecode(Tags().Replace(html, " ")).Replace('\u00a0', ' ');

        Assert.Contains(cord, words, StringComparison.Ordinal);
        Assert.DoesNotContain($"{cord} (", words, StringComparison.Ordinal);
        Assert.Contains(tape, words, StringComparison.Ordinal);
        Assert.DoesNotContain($"{tape} (", words, StringComparison.Ordinal);
        Assert.Contains(filling, words, StringComparison.Ordinal);
    }

    private const string Seat = """ "kind": "rectangle", "width": 34, "depth": 26 """;

    private async Task<string> PaperAsync(string language, string call, string order = Order)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri($"/v1/{call}", UriKind.Relative))
        {
            Content = new StringContent(order, Encoding.UTF8, "application/json"),
        };
        request.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue("text/html"));
        request.Headers.AcceptLanguage.ParseAdd(language);
        using HttpResponseMessage response = await service.Http.SendAsync(request);
        string text = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, text);
        return text;
    }

    [GeneratedRegex("(?s)<style.*?</style>|<script.*?</script>|<[^>]*>")]
    private static partial Regex Tags();

    [GeneratedRegex(
        @"\b(the|of|and|cut|sheets?|pieces?|top|bottom|front|back|left|right|upper|lower|boxing|zipper|handle|bolt|across|notch|copy|row"
            + @"|column|must|patterns?|size|about|steps?|price)\b",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex English();

    // Parts and edges as programs name them.
    [GeneratedRegex(@"\b(boxing-\d|left-|right-|back-(top|bottom)|front-(top|bottom)|(top|bottom|boxing|upper|lower)\.[a-z])")]
    private static partial Regex JoinedWords();

    [GeneratedRegex(@"\b(foam|adhesive|zipper|buttons?|twine|thread|batting)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Bought();

    [GeneratedRegex(@"\d[\u00a0 ]in\b")]
    private static partial Regex InchSymbol();
}
