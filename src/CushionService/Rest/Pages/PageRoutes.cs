using CushionService.Widget;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Extensions.FileProviders;

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
        app.MapGet("/", (HttpContext http) => Page(http, front)).ExcludeFromDescription();
        app.MapGet(
                "/widget",
                () =>
                    TypedResults.Ok(
                        new
                        {
                            widget.Version,
                            widget.Path,
                            widget.Integrity,
                            Bytes = widget.Bytes.Length,
                        }
                    )
            )
            .ExcludeFromDescription();
        app.MapGet(widget.Path, (HttpContext http) => Module(http, widget)).ExcludeFromDescription();
        app.UseStaticFiles(Files("wwwroot", ""));
        app.UseStaticFiles(Files("Demo", "/demo"));
        app.MapGuide();
    }

    // A folder beside the program, at an address.
    private static StaticFileOptions Files(string folder, string at) =>
        new()
        {
            FileProvider = new PhysicalFileProvider(Path.Combine(AppContext.BaseDirectory, folder)),
            RequestPath = at,
            OnPrepareResponse = context => context.Context.Response.Headers.CacheControl = Recheck,
        };

    // The page names the module with its digest, so it must not be kept beyond a release.
    private static ContentHttpResult Page(HttpContext http, string html)
    {
        http.Response.Headers.CacheControl = Recheck;
        return TypedResults.Content(html, "text/html; charset=utf-8");
    }

    // A shop's page loads it from another origin, with an integrity attribute, which a browser checks only where CORS
    // allows the page to.
    private static FileContentHttpResult Module(HttpContext http, WidgetModule widget)
    {
        http.Response.Headers.CacheControl = Forever;
        http.Response.Headers.AccessControlAllowOrigin = "*";
        return TypedResults.Bytes(widget.Bytes.AsMemory(), "text/javascript; charset=utf-8");
    }
}
