using System.Text.RegularExpressions;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Pages;

/// <summary>The repository's Markdown documents: their links and the anchors of their headings.</summary>
internal static partial class MarkdownDocuments
{
    /// <summary>Paths of all documents from the root, with slashes.</summary>
    public static IReadOnlyList<string> All { get; } =
    [.. Directory.EnumerateFiles(Repository.Root, "*.md").Concat(Under("src")).Concat(Under("tests")).Select(Relative).Order()];

    /// <summary>Targets of the links and pictures of a document; what is quoted as code is none.</summary>
    public static IEnumerable<string> Links(string document) =>
        Link().Matches(Code().Replace(Repository.Read(document), "")).Select(match => match.Groups["target"].Value);

    /// <summary>Anchors of a document's headings, as GitHub makes them.</summary>
    public static IEnumerable<string> Anchors(string document) =>
        Heading()
            .Matches(Code().Replace(Repository.Read(document), ""))
            .Select(match => NotInAnchor().Replace(match.Groups["text"].Value.Trim().ToLowerInvariant(), "").Replace(' ', '-'));

    private static IEnumerable<string> Under(string folder) =>
        Directory
            .EnumerateFiles(Path.Combine(Repository.Root, folder), "*.md", SearchOption.AllDirectories)
            .Where(file => !Relative(file).Split('/').Any(part => part is "bin" or "obj" or "node_modules" or "build"));

    private static string Relative(string file) => Path.GetRelativePath(Repository.Root, file).Replace('\\', '/');

    [GeneratedRegex(@"\[[^\]]*\]\((?<target>[^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"^```.*?^```|`[^`\n]*`", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Code();

    [GeneratedRegex(@"^#+ (?<text>.+)$", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex(@"[^\p{L}\p{N} _-]")]
    private static partial Regex NotInAnchor();
}
