using System.Text;
using System.Text.Json;
using CushionService.Widget;

namespace CushionService.Rest.Pages;

/// <summary>The pages: the demonstration with its files, the element that a shop puts into its own pages, and the
/// guide.</summary>
internal static class PageRoutes
{
    // The module's path has its digest: another content has another path.
    private const string Forever = "public, max-age=31536000, immutable";

    // Kept, but asked for again each time: files change with a release, under the same path.
    private const string Recheck = "no-cache";

    /// <summary>Maps the pages. None needs a scope.</summary>
    public static void MapPages(this WebApplication app)
    {
        WidgetModule widget = WidgetModule.Current;
        string front = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "wwwroot", "index.html"))
            .Replace("{widget}", widget.Path, StringComparison.Ordinal)
            .Replace("{integrity}", widget.Integrity, StringComparison.Ordinal);
        app.MapFixed("/", new FixedAnswer(Encoding.UTF8.GetBytes(front), "text/html; charset=utf-8", Recheck));
        byte[] about = JsonSerializer.SerializeToUtf8Bytes(
            new
            {
                widget.Version,
                widget.Path,
                widget.Integrity,
                Bytes = widget.Bytes.Length,
            },
            JsonSerializerOptions.Web
        );
        app.MapFixed("/widget", new FixedAnswer(about, "application/json; charset=utf-8", Recheck));
        FixedAnswer module = new(widget.Bytes.ToArray(), "text/javascript; charset=utf-8", Forever);
        app.MapMethods(widget.Path, FixedRoutes.Methods, (HttpContext http) => Module(http, module)).ExcludeFromDescription();
        byte[] schema = JsonSerializer.SerializeToUtf8Bytes(PriceBookSchema.Make());
        app.MapFixed(PriceBookSchema.Path, new FixedAnswer(schema, PriceBookSchema.MediaType, Recheck));
        app.MapFolder("wwwroot", "", Recheck);
        app.MapFolder("Demo", "/demo", Recheck);
        app.MapGuide();
    }

    // A shop's page loads it from another origin, with an integrity attribute, which a browser checks only where CORS
    // allows the page to.
    private static Task Module(HttpContext http, FixedAnswer module)
    {
        http.Response.Headers.AccessControlAllowOrigin = "*";
        return module.WriteAsync(http);
    }
}
