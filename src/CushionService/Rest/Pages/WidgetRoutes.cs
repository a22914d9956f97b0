using System.Text.Encodings.Web;
using System.Text.Json;
using CushionService.Widget;
using Microsoft.AspNetCore.StaticFiles;

namespace CushionService.Rest.Pages;

/// <summary>Maps the element that a shop puts into its own pages: under an address that never moves and is soon asked for again, and
/// under the version of each build, which never changes.</summary>
internal static class WidgetRoutes
{
    private const string Stable = "/widget/v1";

    // The path has the digest of the files: another content has another path.
    private const string Forever = "public, max-age=31536000, immutable";

    // Five minutes bound how long a shop's page may have the build before; another hour it may be shown while the new one is fetched.
    private const string Short = "public, max-age=300, stale-while-revalidate=3600";

    // Kept, but asked for again each time.
    private const string Recheck = "no-cache";

    // A person copies the integrity from the answer, plus signs and all.
    private static readonly JsonSerializerOptions AsItIs = new(JsonSerializerOptions.Web)
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Maps this build, and those kept in the folder <c>Widget:Builds</c>, where this one is put too. The address of a build
    /// that is not kept leads to the current one.</summary>
    public static void MapWidget(this WebApplication app)
    {
        WidgetModule widget = WidgetModule.Current;
        byte[] about = JsonSerializer.SerializeToUtf8Bytes(
            new
            {
                widget.Version,
                Stable = $"{Stable}/{WidgetModule.Main}",
                widget.Path,
                widget.Integrity,
                Bytes = widget.Bytes.Length,
            },
            AsItIs
        );
        app.MapFixed("/widget", new FixedAnswer(about, "application/json; charset=utf-8", Recheck));
        foreach (WidgetFile file in widget.Files)
        {
            FixedAnswer answer = new([.. file.Bytes], file.MediaType, Forever);
            app.Map($"/widget/{widget.Version}/{file.Name}", answer, Forever);
            app.Map($"{Stable}/{file.Name}", answer, Short);
        }

        if (app.Configuration["Widget:Builds"] is { Length: > 0 } folder)
        {
            WidgetFiles.Write(Path.Combine(folder, widget.Version), widget);
            app.MapKept(folder, widget.Version);
        }

        app.MapMethods(
                "/widget/{version}/" + WidgetModule.Main,
                FixedRoutes.Methods,
                static http =>
                {
                    http.Response.Headers.AccessControlAllowOrigin = "*";
                    http.Response.Headers.CacheControl = Short;
                    http.Response.Redirect($"{Stable}/{WidgetModule.Main}");
                    return Task.CompletedTask;
                }
            )
            .ExcludeFromDescription();
    }

    private static void MapKept(this WebApplication app, string folder, string current)
    {
        FileExtensionContentTypeProvider types = new();
        foreach (string file in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            string path = Path.GetRelativePath(folder, file).Replace(Path.DirectorySeparatorChar, '/');
            if (!path.StartsWith(current + "/", StringComparison.Ordinal) && types.TryGetContentType(file, out string? type))
            {
                app.Map($"/widget/{path}", new FixedAnswer(File.ReadAllBytes(file), $"{type}; charset=utf-8", Forever), Forever);
            }
        }
    }

    // A shop's page loads them from another origin, the module with an integrity attribute, which a browser checks only where CORS
    // allows the page to.
    private static void Map(this WebApplication app, string path, FixedAnswer answer, string caching) =>
        app.MapMethods(
                path,
                FixedRoutes.Methods,
                (HttpContext http) =>
                {
                    http.Response.Headers.AccessControlAllowOrigin = "*";
                    return answer.WriteAsync(http, caching);
                }
            )
            .ExcludeFromDescription();
}
