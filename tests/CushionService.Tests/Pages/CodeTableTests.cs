using System.Text;
using System.Text.RegularExpressions;
using CushionService.Contract;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Pages;

/// <summary>The table of codes lists every code of the source with its statuses. What a code says is written there by hand.</summary>
public sealed partial class CodeTableTests
{
    private const string Page = "src/CushionService/docs/developers/tables.md";

    [Fact]
    public void Every_code_is_in_the_table_with_its_statuses_and_a_meaning()
    {
        Dictionary<string, string> meanings = Row()
            .Matches(Repository.Read(Page))
            .ToDictionary(row => row.Groups["code"].Value, row => row.Groups["meaning"].Value);
        (string Code, bool Warns)[] codes = [.. Source().Distinct().OrderBy(code => code)];
        var table = new StringBuilder("| code | REST | gRPC | what it says |\n|---|---|---|---|\n");
        foreach ((string code, bool warns) in codes)
        {
            string statuses = warns ? "warning | warning" : $"{Statuses.Of(code).Http} | `{Screaming(Statuses.Of(code).Grpc.ToString())}`";
            table.Append($"| `{code}` | {statuses} | {meanings.GetValueOrDefault(code, "")} |\n");
        }

        WrittenPart.IsUpToDate(Page, "codes", table.ToString());
        Assert.All(
            codes,
            code => Assert.True(meanings.GetValueOrDefault(code.Code) is { Length: > 0 }, $"{Page} does not say what {code.Code} means.")
        );
    }

    // A literal instead of a code: the nearest call before it is one that makes a violation or a warning.
    private static IEnumerable<(string Code, bool Warns)> Source()
    {
        foreach (
            string file in Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "*.cs", SearchOption.AllDirectories).Where(IsOurs)
        )
        {
            string text = File.ReadAllText(file);
            foreach (Match literal in Literal().Matches(text))
            {
                string before = text[Math.Max(0, literal.Index - 200)..literal.Index];
                if (Call().Matches(before) is { Count: > 0 } calls && Maker().IsMatch(calls[^1].Groups["name"].Value))
                {
                    yield return (literal.Groups["code"].Value, calls[^1].Groups["name"].Value == "Warn" || IsWarning(file, text, literal));
                }
            }
        }
    }

    private static bool IsOurs(string file) => !file.Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj");

    // The engine and the wording of its answers report one refusal; all else that they report is a warning.
    private static bool IsWarning(string file, string text, Match literal) =>
        (
            (file.Contains("CushionService.Engine", StringComparison.Ordinal) || file.Contains("Wording", StringComparison.Ordinal))
            && literal.Groups["code"].Value != "wider-than-fabric"
        ) || text[Math.Max(0, literal.Index - 400)..literal.Index].Contains("warnings", StringComparison.OrdinalIgnoreCase);

    private static string Screaming(string name) => Inner().Replace(name, "_$0").ToUpperInvariant();

    [GeneratedRegex(@"^\| `(?<code>[a-z-]+)` \| [^|]+ \| [^|]+ \| (?<meaning>[^|]*) \|$", RegexOptions.Multiline)]
    private static partial Regex Row();

    [GeneratedRegex(
        """
            "(?<code>[a-z]+(-[a-z]+)*)"\s*[,)]
            """
    )]
    private static partial Regex Literal();

    [GeneratedRegex(@"\b(?<name>[A-Z]\w*)\(")]
    private static partial Regex Call();

    [GeneratedRegex("^(Refuse|RefuseRange|Refused|Fails|WithErrorCode|Warn|Violation)$")]
    private static partial Regex Maker();

    [GeneratedRegex("(?<!^)[A-Z]")]
    private static partial Regex Inner();
}
