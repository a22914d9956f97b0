using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CushionService.Contract;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Rest;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Pages;

/// <summary>The register has every code that the source makes, and everything that lists codes is made of the register: the guide's
/// page, the comments of the protos, the OpenAPI document.</summary>
public sealed partial class CodeTableTests
{
    private const string Page = "src/CushionService/docs/codes.md";
    private const string Protos = "protos/cushionservice/v1/violation.proto";
    private const string Register = "src/CushionService/Contract/CodeRegister.cs";

    private static readonly MessageWriter Words = new(Language.English, LengthUnit.Inch);

    [Fact]
    public void Every_code_of_the_source_is_in_the_register_with_its_use()
    {
        foreach ((string name, bool warns) in Source().Distinct())
        {
            Code? code = CodeRegister.Find(name);
            Assert.True(code is not null, $"{Register} does not have {name}: add a row, and its sentence to CodeTexts.resx.");
            Assert.Equal(warns, code.Uses.HasFlag(CodeUse.Warning));
            Assert.NotEqual(warns, code.Uses.HasFlag(CodeUse.Violation));
        }
    }

    // However a violation or a warning is made, its message is beside its code.
    [Fact]
    public void Every_code_that_a_message_explains_is_in_the_register()
    {
        string[] explained =
        [
            .. Files().SelectMany(file => Explained().Matches(File.ReadAllText(file))).Select(code => code.Groups["code"].Value),
        ];
        Assert.Contains("grain-chosen", explained);
        Assert.All(explained, code => Assert.NotNull(CodeRegister.Find(code)));
    }

    [Fact]
    public void Every_code_of_the_register_is_made_somewhere_and_says_what_it_means()
    {
        HashSet<string> literals =
        [
            .. Files()
                .Where(file => !file.EndsWith("CodeRegister.cs", StringComparison.Ordinal))
                .SelectMany(file => Quoted().Matches(File.ReadAllText(file)))
                .Select(word => word.Groups["code"].Value),
            .. Enumerable.Range(400, 200).Select(CodeRegister.OfStatus),
        ];
        Assert.All(CodeRegister.All, code => Assert.Contains(code.Name, literals));
        Assert.All(CodeRegister.All, code => Assert.Equal($"code.{code.Name}", code.Meaning.Key));
        Assert.Equal(CodeRegister.All.Select(code => code.Name).Order(StringComparer.Ordinal), CodeRegister.All.Select(code => code.Name));
        Assert.All(Enumerable.Range(400, 200), status => Assert.NotNull(CodeRegister.Find(CodeRegister.OfStatus(status))));
    }

    [Fact]
    public void The_guide_lists_the_register()
    {
        var table = new StringBuilder("| code | met in | REST | gRPC | what it says |\n|---|---|---|---|---|\n");
        foreach (Code code in CodeRegister.All)
        {
            string uses = string.Join(", ", CodeEntry.Of(code, Words).Uses),
                rest = code.Http + (code.MaySendAgain ? ", again" : ""),
                grpc = code.GrpcName is { } status ? $"`{status}`" : "";
            table.Append($"| `{code.Name}` | {uses} | {rest} | {grpc} | {Words.Text(code.Meaning)} |\n");
        }

        WrittenPart.IsUpToDate(Page, "codes", table.ToString());
    }

    [Theory]
    [InlineData("codes", "Violation, Warning")]
    [InlineData("problems", "Problem")]
    public void The_comments_of_the_protos_list_the_register(string part, string met)
    {
        CodeUse uses = Enum.Parse<CodeUse>(met);
        string lines = string.Concat(CodeRegister.For(uses).Select(code => Commented($"- `{code.Name}`: {Words.Text(code.Meaning)}")));
        WrittenPart.Between(Protos, $"  // made: {part}\n", $"  // end of {part}", lines);
    }

    [Theory]
    [InlineData("ViolationAnswer", "Violation, Warning")]
    [InlineData("CautionAnswer", "Caution")]
    [InlineData("Problem", "Problem")]
    public void The_document_lists_the_register_as_an_open_enumeration(string record, string met)
    {
        CodeUse uses = Enum.Parse<CodeUse>(met);
        JsonNode code = JsonNode.Parse(Repository.Read("openapi/v1.json"))!["components"]!["schemas"]![record]!["properties"]!["code"]!;
        Assert.Equal("string", (string?)code["type"]);
        Assert.Null(code["enum"]);
        Assert.Equal(CodeRegister.For(uses).Select(one => one.Name), code["x-extensible-enum"]!.AsArray().Select(one => (string)one!));
        Assert.All(
            CodeRegister.For(uses),
            one => Assert.Contains($"- `{one.Name}`: {Words.Text(one.Meaning)}", (string)code["description"]!, StringComparison.Ordinal)
        );
    }

    // Lines of a comment of at most 120 signs.
    private static string Commented(string text)
    {
        StringBuilder lines = new("  //");
        int length = 0;
        foreach (string word in text.Split(' '))
        {
            if (length + word.Length > 120)
            {
                lines.Append("\n  //  ");
                length = 0;
            }

            lines.Append(' ').Append(word);
            length += word.Length + 1;
        }

        return lines.Append('\n').ToString();
    }

    // A literal instead of a code: the nearest call before it is one that makes a violation or a warning.
    private static IEnumerable<(string Code, bool Warns)> Source()
    {
        foreach (string file in Files())
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

    private static IEnumerable<string> Files() =>
        Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "*.cs", SearchOption.AllDirectories).Where(IsOurs);

    private static bool IsOurs(string file) => !file.Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj");

    // The engine and the wording of its answers report two refusals, of pieces that no fabric or no cut line holds; all else that they
    // report is a warning.
    private static bool IsWarning(string file, string text, Match literal) =>
        (
            (file.Contains("CushionService.Engine", StringComparison.Ordinal) || file.Contains("Wording", StringComparison.Ordinal))
            && literal.Groups["code"].Value is not ("wider-than-fabric" or "not-combinable")
        ) || text[Math.Max(0, literal.Index - 400)..literal.Index].Contains("warnings", StringComparison.OrdinalIgnoreCase);

    [GeneratedRegex(
        """
            "(?<code>[a-z]+(-[a-z]+)*)"\s*[,)]
            """
    )]
    private static partial Regex Literal();

    [GeneratedRegex(@"\b(?<name>[A-Z]\w*)\(")]
    private static partial Regex Call();

    [GeneratedRegex(
        """
            "(?<code>[a-z]+(-[a-z]+)*)",\s*(\w+\.)?[A-Z]\w*Texts\.
            """
    )]
    private static partial Regex Explained();

    [GeneratedRegex("^(Refuse|RefuseRange|Refused|Fails|WithErrorCode|Warn|Violation)$")]
    private static partial Regex Maker();

    [GeneratedRegex("\"(?<code>[a-z]+(-[a-z]+)*)\"")]
    private static partial Regex Quoted();
}
