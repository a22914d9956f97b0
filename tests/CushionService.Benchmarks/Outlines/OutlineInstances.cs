using System.Text.Json;
using CushionService.Benchmarks.Nesting;
using CushionService.Nesting;

namespace CushionService.Benchmarks.Outlines;

/// <summary>Reads the nesting literature's instances from the open data.</summary>
internal static class OutlineInstances
{
    /// <summary>A thousand units to one of the instance's: the published lengths have three decimals.</summary>
    private const double Scale = 1000;

    /// <summary>The instances; null when the data are absent.</summary>
    public static IReadOnlyList<OutlineInstance>? Read()
    {
        var folder = Path.Combine(OpenData.Folder() ?? ".", "outlines");
        if (!Directory.Exists(folder))
        {
            return null;
        }

        using var list = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder, "best-known.json")));
        return
        [
            .. list
                .RootElement.EnumerateArray()
                .Select(entry =>
                {
                    var name = entry.GetProperty("name").GetString()!;
                    return new OutlineInstance(
                        name,
                        Problem(Path.Combine(folder, name + ".json")),
                        entry.GetProperty("bestLength").GetDouble() * Scale
                    );
                }),
        ];
    }

    private static StripProblem Problem(string path)
    {
        using var instance = JsonDocument.Parse(File.ReadAllText(path));
        return new StripProblem
        {
            Width = (long)(instance.RootElement.GetProperty("stripWidth").GetDouble() * Scale),
            Pieces = [.. instance.RootElement.GetProperty("pieces").EnumerateArray().Select(Piece)],
        };
    }

    /// <summary>The literature lays the strip along x; here it runs along y, so the axes change places.</summary>
    private static NestingPiece Piece(JsonElement piece)
    {
        var corners = piece
            .GetProperty("points")
            .EnumerateArray()
            .Select(point => (point[1].GetDouble() * Scale, point[0].GetDouble() * Scale))
            .Reverse()
            .ToList();
        var turns = piece.GetProperty("rotations").GetArrayLength();
        return OutlinePieces.Piece(piece.GetProperty("quantity").GetInt32(), corners[0] == corners[^1] ? corners[1..] : corners) with
        {
            Rotations = turns switch
            {
                1 => Rotations.None,
                2 => Rotations.HalfTurn,
                _ => Rotations.QuarterTurns,
            },
        };
    }
}
