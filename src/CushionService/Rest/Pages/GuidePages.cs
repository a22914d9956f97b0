using System.Text;
using Markdig;
using Markdig.Extensions.AutoIdentifiers;

namespace CushionService.Rest.Pages;

/// <summary>The guide: the Markdown pages of the folder <c>docs</c>, and their pictures, at <c>/guide/</c>.</summary>
internal static class GuidePages
{
    // Beside the program; the first page is that of the address of the guide itself.
    private const string Folder = "docs";
    private const string First = "index";

    // Kept, but asked for again each time: pages change with a release, under the same path.
    private const string Recheck = "no-cache";

    // Tables as GitHub writes them, and a heading's text as its anchor.
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UsePipeTables()
        .UseAutoIdentifiers(AutoIdentifierOptions.GitHub)
        .Build();

    /// <summary>Serves the pages. They are made into HTML once.</summary>
    public static void MapGuide(this WebApplication app)
    {
        foreach (string file in Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, Folder), "*.md"))
        {
            string name = Path.GetFileNameWithoutExtension(file);
            FixedAnswer page = new(Encoding.UTF8.GetBytes(Html(File.ReadAllText(file))), "text/html; charset=utf-8", Recheck);
            app.MapFixed($"/guide/{name}.md", page);
            if (name == First)
            {
                // Links within the guide are relative, so that the address must end in its slash.
                app.MapMethods(
                        "/guide",
                        FixedRoutes.Methods,
                        (HttpContext http) =>
                            http.Request.Path == "/guide/" ? page.WriteAsync(http) : Results.Redirect("/guide/").ExecuteAsync(http)
                    )
                    .ExcludeFromDescription();
            }
        }

        app.MapFolder(Folder, "/guide", Recheck);
    }

    // The title of a page is its first heading.
    private static string Html(string markdown) =>
        PageFrame.Of(markdown[..markdown.IndexOf('\n', StringComparison.Ordinal)].TrimStart('#', ' '), Markdown.ToHtml(markdown, Pipeline));
}
