using System.Collections.Frozen;
using System.Net;
using Markdig;
using Markdig.Extensions.AutoIdentifiers;
using Microsoft.Extensions.FileProviders;

namespace CushionService.Rest.Pages;

/// <summary>The guide: the Markdown pages of the folder <c>docs</c>, and their pictures, at <c>/guide/</c>.</summary>
internal static class GuidePages
{
    // Beside the program; the first page is that of the address of the guide itself.
    private const string Folder = "docs";
    private const string First = "index";

    // Tables as GitHub writes them, and a heading's text as its anchor.
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UsePipeTables()
        .UseAutoIdentifiers(AutoIdentifierOptions.GitHub)
        .Build();

    /// <summary>Serves the pages. They are made into HTML once, when the first of them is asked for.</summary>
    public static void MapGuide(this WebApplication app)
    {
        Lazy<FrozenDictionary<string, string>> pages = new(Rendered);
        app.MapGet("/guide", (HttpContext http) => http.Request.Path == "/guide/" ? Page(pages.Value, First) : Results.Redirect("/guide/"))
            .ExcludeFromDescription();
        app.MapGet("/guide/{name}.md", (string name) => Page(pages.Value, name)).ExcludeFromDescription();
        app.UseStaticFiles(
            new StaticFileOptions
            {
                FileProvider = new PhysicalFileProvider(Path.Combine(AppContext.BaseDirectory, Folder)),
                RequestPath = "/guide",
            }
        );
    }

    // 404 for a page that there is not; the names come from the files, so that no path can lead out of the folder.
    private static IResult Page(FrozenDictionary<string, string> pages, string name) =>
        pages.TryGetValue(name, out string? html) ? Results.Content(html, "text/html; charset=utf-8") : Results.NotFound();

    // Every page by its name, which is that of its file without the ending.
    private static FrozenDictionary<string, string> Rendered() =>
        Directory
            .EnumerateFiles(Path.Combine(AppContext.BaseDirectory, Folder), "*.md")
            .ToFrozenDictionary(file => Path.GetFileNameWithoutExtension(file), file => Html(File.ReadAllText(file)));

    // The title of a page is its first heading. The policy of SecurityHeaders allows no inline style.
    private static string Html(string markdown) =>
        $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
              <meta charset="utf-8">
              <meta name="viewport" content="width=device-width">
              <title>{WebUtility.HtmlEncode(markdown[..markdown.IndexOf('\n', StringComparison.Ordinal)].TrimStart('#', ' '))}</title>
              <link rel="stylesheet" href="/site/site.css">
              <link rel="stylesheet" href="/site/guide.css">
              <link rel="icon" href="/site/cushion.svg" type="image/svg+xml">
            </head>
            <body>
              <nav aria-label="Site"><a href="/">CushionService</a> <a href="/guide/">Guide</a> <a href="/docs/">Try the calls</a></nav>
              <main>
            {Markdown.ToHtml(markdown, Pipeline)}
              </main>
            </body>
            </html>

            """;
}
