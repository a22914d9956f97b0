using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Pages;

/// <summary>The file NOTICE lists the packages that run in the service, and the assets of the page to try the calls, with their
/// licences.</summary>
public sealed class NoticeTests
{
    private const string Head = """
        CushionService runs with the libraries below. Each keeps its own licence.


        """;

    // Packages whose licence is a file or an address say no expression; read in the package's own licence file.
    private static readonly Dictionary<string, string> ReadInTheirFiles = new(StringComparer.OrdinalIgnoreCase);

    [Fact]
    public void NOTICE_lists_what_runs_in_the_service()
    {
        using var restored = JsonDocument.Parse(Repository.Read("src", "CushionService", "obj", "project.assets.json"));
        string[] folders = [.. restored.RootElement.GetProperty("packageFolders").EnumerateObject().Select(folder => folder.Name)];
        var text = new StringBuilder(Head);
        foreach (JsonProperty library in Libraries(restored).OrderBy(library => library.Name, StringComparer.OrdinalIgnoreCase))
        {
            string[] name = library.Name.Split('/');
            text.Append($"{name[0]} {name[1]}: {Licence(folders, name[0], name[1])}\n");
        }

        text.Append("\nThe page at /docs is drawn by Swagger UI, which Swashbuckle.AspNetCore.SwaggerUI carries: Apache-2.0.\n");
        text.Append("\nPDF documents embed DejaVu Sans: Bitstream Vera licence, in src/CushionService/Documents/Pdf/Fonts/LICENSE.txt.\n");
        text.Append("\nprotos/google/type/money.proto is Google's, unchanged: Apache-2.0.\n");
        WrittenPart.WholeIsUpToDate("NOTICE", text.ToString());
    }

    // Those that put an assembly or a native library beside the service's own.
    private static IEnumerable<JsonProperty> Libraries(JsonDocument restored) =>
        restored
            .RootElement.GetProperty("targets")
            .EnumerateObject()
            .First()
            .Value.EnumerateObject()
            .Where(library => library.Value.GetProperty("type").GetString() == "package")
            .Where(library =>
                new[] { "runtime", "runtimeTargets" }.Any(kind =>
                    library.Value.TryGetProperty(kind, out JsonElement files)
                    && files.EnumerateObject().Any(file => !file.Name.EndsWith("/_._", StringComparison.Ordinal))
                )
            );

    private static string Licence(string[] folders, string id, string version)
    {
        string package = id.ToLowerInvariant();
        string specification = folders
            .Select(folder => Path.Combine(folder, package, version.ToLowerInvariant(), $"{package}.nuspec"))
            .First(File.Exists);
        XElement? licence = XDocument.Load(specification).Descendants().FirstOrDefault(element => element.Name.LocalName == "license");
        return licence?.Attribute("type")?.Value == "expression" ? licence.Value
            : ReadInTheirFiles.TryGetValue(id, out string? read) ? read
            : throw new InvalidOperationException($"Read the licence of {id} {version} and add it to this test.");
    }
}
