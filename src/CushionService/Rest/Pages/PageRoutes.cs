using System.Text.Json;

namespace CushionService.Rest.Pages;

/// <summary>The pages: the demonstration with its files, the element that a shop puts into its own pages, and the
/// guide.</summary>
internal static class PageRoutes
{
    // Kept, but asked for again each time: files change with a release, under the same path.
    private const string Recheck = "no-cache";

    /// <summary>Maps the pages. None needs a scope.</summary>
    public static void MapPages(this WebApplication app)
    {
        app.MapSite();
        app.MapWidget();
        byte[] schema = JsonSerializer.SerializeToUtf8Bytes(PriceBookSchema.Make());
        app.MapFixed(PriceBookSchema.Path, new FixedAnswer(schema, PriceBookSchema.MediaType, Recheck));
        app.MapFolder("wwwroot", "", Recheck);
        app.MapFolder("Demo", "/demo", Recheck);
        app.MapGuide();
    }
}
