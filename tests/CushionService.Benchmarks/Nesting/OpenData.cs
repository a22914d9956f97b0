using System.Text.Json;

namespace CushionService.Benchmarks.Nesting;

/// <summary>Finds and reads the open data: in the folder that CUSHION_DATA names.</summary>
internal static class OpenData
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web);

    /// <summary>The data folder; null when there is none.</summary>
    public static string? Folder() =>
        Environment.GetEnvironmentVariable("CUSHION_DATA") is { Length: > 0 } named && Directory.Exists(named) ? named : null;

    /// <summary>The instances of a family; null when the file is absent.</summary>
    public static IReadOnlyList<OpenInstance>? Family(string name)
    {
        string path = Path.Combine(Folder() ?? ".", "rectangles", name + ".json");
        return File.Exists(path) ? JsonSerializer.Deserialize<FamilyFile>(File.ReadAllText(path), Options)!.Instances : null;
    }

    private sealed record FamilyFile(IReadOnlyList<OpenInstance> Instances);
}
