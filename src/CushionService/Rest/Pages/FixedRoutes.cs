using Microsoft.AspNetCore.StaticFiles;

namespace CushionService.Rest.Pages;

/// <summary>Maps answers that are the same until the next release. They are read once, and GET and HEAD are answered from
/// memory.</summary>
internal static class FixedRoutes
{
    /// <summary>The methods of an answer that only gives.</summary>
    public static string[] Methods { get; } = [HttpMethods.Get, HttpMethods.Head];

    /// <summary>Maps one answer.</summary>
    /// <param name="app">The service.</param>
    /// <param name="path">Its path.</param>
    /// <param name="answer">The answer.</param>
    public static void MapFixed(this WebApplication app, string path, FixedAnswer answer) =>
        app.MapMethods(path, Methods, answer.WriteAsync).ExcludeFromDescription();

    /// <summary>Maps every file of a folder beside the program, and of the folders in it. What there is no media type for
    /// is not served.</summary>
    /// <param name="app">The service.</param>
    /// <param name="folder">The folder.</param>
    /// <param name="at">The path that it has, without a slash at its end.</param>
    /// <param name="caching">The value of <c>Cache-Control</c>.</param>
    public static void MapFolder(this WebApplication app, string folder, string at, string caching)
    {
        FileExtensionContentTypeProvider types = new();
        string root = Path.Combine(AppContext.BaseDirectory, folder);
        foreach (string file in Directory.EnumerateFiles(root, "*", SearchOption.AllDirectories))
        {
            string path = Path.GetRelativePath(root, file).Replace(Path.DirectorySeparatorChar, '/');
            if (types.TryGetContentType(file, out string? type) && !path.EndsWith(".md", StringComparison.Ordinal))
            {
                string text = type.StartsWith("text/", StringComparison.Ordinal) ? "; charset=utf-8" : "";
                app.MapFixed($"{at}/{path}", new FixedAnswer(File.ReadAllBytes(file), type + text, caching));
            }
        }
    }
}
