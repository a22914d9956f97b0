using System.Text.RegularExpressions;
using CushionService.Engine.Geometry;
using CushionService.Engine.Patterns.Panels;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Architecture;

/// <summary>Parts and edges are values; only the types that own their names put them into text, and nothing reads that text back.</summary>
public sealed partial class PartNameTests
{
    private static readonly HashSet<string> Names =
    [
        .. Enum.GetValues<PartKind>().Select(kind => new PartName(kind) { Run = EdgeName.Front }.ToString()),
        .. Enum.GetValues<EdgeWord>().Where(word => word != EdgeWord.None).Select(word => new EdgeName(word).ToString()),
        .. new[] { FaceHalf.Front, FaceHalf.Back }.Select(half => (PartName.Bottom with { Half = half }).ToString()),
    ];

    [Fact]
    public void No_literal_of_the_engine_names_a_part_or_an_edge_outside_the_types_that_own_the_names() =>
        Assert.Empty(
            from file in Sources()
            where Path.GetFileName(file) is not ("PartName.cs" or "EdgeName.cs")
            from line in File.ReadLines(file)
            where !line.TrimStart().StartsWith("///", StringComparison.Ordinal)
            from Match literal in Literal().Matches(line)
            where Names.Contains(literal.Groups[1].Value)
            select $"{Path.GetFileName(file)}: {line.Trim()}"
        );

    [Fact]
    public void No_code_takes_a_part_s_text_apart() =>
        Assert.Empty(
            from file in Sources()
            from line in File.ReadLines(file)
            where Parsing().IsMatch(line)
            select $"{Path.GetFileName(file)}: {line.Trim()}"
        );

    private static IEnumerable<string> Sources() =>
        Directory
            .EnumerateFiles(Path.Combine(Repository.Root, "src", "CushionService.Engine"), "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal));

    [GeneratedRegex("""(?<![\w"])"([a-z][a-z0-9-]*)"(?!")""")]
    private static partial Regex Literal();

    [GeneratedRegex(
        """(\.Part|\.Edge|\.Name|Purpose)(\.ToString\(\))?\.(Split|StartsWith|EndsWith|Contains|IndexOf|Substring)\(|Split\('-'\)"""
    )]
    private static partial Regex Parsing();
}
