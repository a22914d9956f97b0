using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Pages;

/// <summary>The guide's register of messages: every key that an answer may carry, its arguments with their types, and the English
/// sentence. Made of the resource files.</summary>
public sealed partial class MessageRegisterTests
{
    private const string Page = "src/CushionService/docs/messages-register.md";

    // Words and names are parts of sentences; no answer carries their keys.
    private static readonly string[] Vocabularies = ["WordTexts", "EdgeTexts", "PartTexts", "FieldNameTexts", "DescriptionTexts"];

    [Fact]
    public void The_guide_lists_every_key()
    {
        StringBuilder table = new();
        foreach (string file in Files())
        {
            table.Append($"\n## {Area(file)}\n\n| key | arguments | in English |\n|---|---|---|\n");
            foreach (XElement data in XDocument.Load(file).Root!.Elements("data"))
            {
                string key = $"{Area(file)}.{(string)data.Attribute("name")!}",
                    arguments = OneLine(data.Element("comment")).Replace("Engine.", "", StringComparison.Ordinal);
                table.Append($"| `{key}` | {arguments} | {OneLine(data.Element("value"))} |\n");
            }
        }

        WrittenPart.IsUpToDate(Page, "messages", table.ToString());
    }

    private static IEnumerable<string> Files() =>
        Directory
            .EnumerateFiles(Path.Combine(Repository.Root, "src"), "*Texts.resx", SearchOption.AllDirectories)
            .Where(file => !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal))
            .Where(file => !Vocabularies.Contains(Path.GetFileNameWithoutExtension(file)))
            .OrderBy(Area, StringComparer.Ordinal);

    // As the generator names it: StepTexts.resx is the area step.
    private static string Area(string file) =>
        Capital().Replace(Path.GetFileNameWithoutExtension(file)[..^"Texts".Length], "-$1").ToLowerInvariant();

    private static string OneLine(XElement? element) =>
        Space().Replace(element?.Value ?? "", " ").Trim().Replace("|", "\\|", StringComparison.Ordinal);

    [GeneratedRegex("(?<!^)([A-Z])")]
    private static partial Regex Capital();

    [GeneratedRegex(@"\s*\n\s*")]
    private static partial Regex Space();
}
