using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using CushionService.Languages;
using CushionService.Rest.Pages;
using CushionService.Tests.Hosting;
using CushionService.Widget;

namespace CushionService.Tests.Pages;

/// <summary>The widget as it is served: its builds, and its words in every language.</summary>
public sealed partial class WidgetTests
{
    public static TheoryData<string> Translated => new("de", "fr", "es");

    [Theory]
    [MemberData(nameof(Translated))]
    public void A_language_has_every_word_that_the_module_says_and_its_holes(string tag)
    {
        Dictionary<string, string> words = WidgetParts.Words(tag);
        Dictionary<string, string> english = new[] { "strings.js", "strings-later.js" }
            .SelectMany(part => Entry().Matches(WidgetParts.Read(part)))
            .ToDictionary(entry => entry.Groups["key"].Value, entry => entry.Groups["text"].Value);

        Assert.True(english.Count > 80, $"Only {english.Count} words were found.");
        Assert.Empty(english.Keys.Except(words.Keys));
        Assert.All(english, word => Assert.Equal(HolesOf(word.Value), HolesOf(words[word.Key])));
    }

    [Theory]
    [MemberData(nameof(Translated))]
    public void A_language_has_every_word_of_the_pages_and_its_holes(string tag)
    {
        using Stream stream = typeof(PageWords).Assembly.GetManifestResourceStream("Pages/Words/en.json")!;
        Dictionary<string, string> english = JsonSerializer.Deserialize<Dictionary<string, string>>(stream)!;
        PageWords words = PageWords.In(LanguageTags.Named(tag)!.Value);

        Assert.All(english, word => Assert.Equal(HolesOf(word.Value), HolesOf(words[word.Key])));
        Assert.True(english.Count(word => words[word.Key] == word.Value) < english.Count / 8, $"{tag} is English.");
    }

    [Fact]
    public void No_page_says_a_word_that_there_is_not()
    {
        foreach (string name in new[] { "frame", "try", "orders", "shops" })
        {
            using StreamReader reader = new(typeof(PageWords).Assembly.GetManifestResourceStream($"Pages/{name}.html")!);
            string[] keys = [.. Hole().Matches(reader.ReadToEnd()).Select(hole => hole.Groups[1].Value)];
            using Stream stream = typeof(PageWords).Assembly.GetManifestResourceStream("Pages/Words/en.json")!;
            Dictionary<string, string> english = JsonSerializer.Deserialize<Dictionary<string, string>>(stream)!;
            Assert.Empty(keys.Except(english.Keys).Except(["language", "path", "title", "widget", "integrity"]));
        }
    }

    [Fact]
    public async Task A_build_that_was_kept_is_served_and_this_one_is_kept_too()
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        try
        {
            Directory.CreateDirectory(Path.Combine(folder, "0.9.0-0147abcd"));
            await File.WriteAllTextAsync(Path.Combine(folder, "0.9.0-0147abcd", WidgetModule.Main), "// before");
            using RunningService service = new(_ => { }, false, ("Widget:Builds", folder));
            using HttpResponseMessage former = await service.Http.GetAsync(
                new Uri($"/widget/0.9.0-0147abcd/{WidgetModule.Main}", UriKind.Relative)
            );

            Assert.Equal("// before", await former.Content.ReadAsStringAsync());
            Assert.Contains("immutable", former.Headers.CacheControl!.ToString(), StringComparison.Ordinal);
            Assert.Equal(
                Encoding.UTF8.GetString(WidgetModule.Current.Bytes.AsSpan()),
                await File.ReadAllTextAsync(Path.Combine(folder, WidgetModule.Current.Version, WidgetModule.Main))
            );
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Theory]
    [InlineData("/", "de", "Kissen nach Maß")]
    [InlineData("/orders", "fr", "Commandes entières")]
    [InlineData("/shops", "es", "Para tiendas")]
    public async Task A_page_is_in_the_reader_s_language(string path, string tag, string said)
    {
        using RunningService service = new();
        using HttpRequestMessage asking = new(HttpMethod.Get, new Uri(path, UriKind.Relative));
        asking.Headers.Add("Accept-Language", tag);
        using HttpResponseMessage asked = await service.Http.SendAsync(asking);
        string named = await service.Http.GetStringAsync(new Uri($"{path}?language={tag}", UriKind.Relative));

        Assert.Contains(said, WebUtility.HtmlDecode(await asked.Content.ReadAsStringAsync()), StringComparison.Ordinal);
        Assert.Contains("Accept-Language", asked.Headers.Vary);
        Assert.Contains(said, WebUtility.HtmlDecode(named), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "How much fabric for a cushion?")]
    [InlineData(
        "?units=in&construction=boxed&outline=rectangle&width=44&depth=18&thickness=3&fabricWidth=54&diameter=",
        "You need 1 1/2 yd"
    )]
    [InlineData("?units=in&construction=boxed&outline=circle&width=44&diameter=16&thickness=3&fabricWidth=54", "You need ")]
    [InlineData(
        "?units=in&construction=boxed&outline=rectangle&width=<b>&depth=18&thickness=3&fabricWidth=54",
        "value=\"&lt;b&gt;\" aria-invalid"
    )]
    public async Task A_browser_gets_the_estimate_as_a_page(string query, string said)
    {
        using RunningService service = new();
        using HttpRequestMessage asking = new(HttpMethod.Get, new Uri("/v1/estimate" + query, UriKind.Relative));
        asking.Headers.Add("Accept", "text/html,application/xhtml+xml,*/*;q=0.8");
        using HttpResponseMessage asked = await service.Http.SendAsync(asking);

        Assert.Contains(said, await asked.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Contains("form-action 'self'", asked.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
        Assert.Contains("Accept", asked.Headers.Vary);
    }

    private static string[] HolesOf(string text) => [.. Brace().Matches(text).Select(hole => hole.Value).Order(StringComparer.Ordinal)];

    [GeneratedRegex("""^\s+"?(?<key>[\w.=-]+)"?: "(?<text>.*)",$""", RegexOptions.Multiline)]
    private static partial Regex Entry();

    [GeneratedRegex(@"\{\w+\}")]
    private static partial Regex Brace();

    [GeneratedRegex(@"\{\{([\w.]+)\}\}")]
    private static partial Regex Hole();
}
