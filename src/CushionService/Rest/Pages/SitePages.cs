using System.Reflection;
using System.Text;
using CushionService.Engine.Messages;
using CushionService.Languages;
using CushionService.Widget;
using Microsoft.Net.Http.Headers;

namespace CushionService.Rest.Pages;

/// <summary>The pages that show the service: try it, whole orders, for shops. Each in every language, made once.</summary>
internal static class SitePages
{
    // Kept, but asked for again each time: pages change with a release, under the same path.
    private const string Recheck = "no-cache";

    private static readonly (string Path, string Template)[] All = [("/", "try"), ("/orders", "orders"), ("/shops", "shops")];

    /// <summary>The path of the page to try the calls.</summary>
    public const string Calls = "/docs/index.html";

    private const string CutSheet = "/cut-sheet.html";

    /// <summary>Maps the pages; their language is that of the query, else the reader's.</summary>
    public static void MapSite(this WebApplication app)
    {
        foreach ((string path, string template) in All)
        {
            Map(app, path, language => Page(path, template, language));
        }

        Map(app, Calls, language => Filled("docs", Calls, PageWords.In(language)));
        Map(app, CutSheet, language => Filled("cut-sheet", CutSheet, PageWords.In(language)));
    }

    private static void Map(WebApplication app, string path, Func<Language, string> page)
    {
        FixedAnswer[] pages =
        [
            .. Enum.GetValues<Language>()
                .Select(language => new FixedAnswer(Encoding.UTF8.GetBytes(page(language)), "text/html; charset=utf-8", Recheck)),
        ];
        app.MapMethods(
                path,
                FixedRoutes.Methods,
                (HttpContext http) =>
                {
                    Language language = ReaderLanguage.Of(http);
                    http.Response.Headers.ContentLanguage = LanguageTags.Of(language);
                    http.Response.Headers.AppendCommaSeparatedValues(HeaderNames.Vary, HeaderNames.AcceptLanguage);
                    return pages[(int)language].WriteAsync(http);
                }
            )
            .WithMetadata(new LanguageParameterAttribute())
            .ExcludeFromDescription();
    }

    private static string Filled(string template, string path, PageWords words) =>
        words
            .Fill(Template(template), new Dictionary<string, string> { ["language"] = words.Tag, ["path"] = path })
            .Replace("{words}", words.Scripts, StringComparison.Ordinal);

    /// <summary>A page in the frame of all pages.</summary>
    /// <param name="path">Its path, which the links to other languages lead to.</param>
    /// <param name="title">Its title, as text.</param>
    /// <param name="body">What it shows, as HTML.</param>
    /// <param name="language">The language of its words.</param>
    public static string Framed(string path, string title, string body, Language language)
    {
        PageWords words = PageWords.In(language);
        return words
            .Fill(
                Template("frame"),
                new Dictionary<string, string>
                {
                    ["language"] = words.Tag,
                    ["path"] = path,
                    ["title"] = title,
                }
            )
            .Replace("{words}", words.Scripts, StringComparison.Ordinal)
            .Replace("{body}", body, StringComparison.Ordinal);
    }

    private static string Page(string path, string template, Language language)
    {
        PageWords words = PageWords.In(language);
        WidgetModule widget = WidgetModule.Current;
        string body = words.Fill(
            Template(template),
            new Dictionary<string, string> { ["widget"] = widget.Path, ["integrity"] = widget.Integrity }
        );
        return Framed(path, words[$"{template}.title"], body, language);
    }

    private static string Template(string name)
    {
        using StreamReader reader = new(Assembly.GetExecutingAssembly().GetManifestResourceStream($"Pages/{name}.html")!);
        return reader.ReadToEnd();
    }
}
