using System.Text.Json;

namespace CushionService.Benchmarks.Nesting;

/// <summary>Finds and reads the open data: the folder that CUSHION_DATA names, or shared/data in a folder above.</summary>
internal static class OpenData
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web);

    /// <summary>The data folder; null when there is none.</summary>
    public static string? Folder()
    {
        if (Environment.GetEnvironmentVariable("CUSHION_DATA") is { Length: > 0 } named)
        {
            return Directory.Exists(named) ? named : null;
        }

        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            string candidate = Path.Combine(folder.FullName, "shared", "data");
            if (Directory.Exists(candidate))
            {
                return candidate;
            }
        }

        return null;
    }

    /// <summary>The instances of a family; null when the file is absent.</summary>
    public static IReadOnlyList<OpenInstance>? Family(string name)
    {
        string path = Path.Combine(Folder() ?? ".", "rectangles", name + ".json");
        return File.Exists(path) ? JsonSerializer.Deserialize<FamilyFile>(File.ReadAllText(path), Options)!.Instances : null;
    }

    private sealed record FamilyFile(IReadOnlyList<OpenInstance> Instances);
}
