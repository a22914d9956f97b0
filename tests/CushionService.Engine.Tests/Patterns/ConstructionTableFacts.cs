using System.Text;
using System.Text.Json;
using CushionService.Engine.Patterns.Constructions;

namespace CushionService.Engine.Tests.Patterns;

/// <summary>The developers' table of what the catalogue offers is made here, and is the one in their tables.</summary>
public sealed class ConstructionTableFacts
{
    private const string Start = "<!-- made: constructions -->";
    private const string End = "<!-- end of constructions -->";

    [Fact]
    public void The_table_lists_what_is_offered_and_the_file_that_drafts_it()
    {
        string root = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(root, "CushionService.sln")))
        {
            root = Path.GetDirectoryName(root)!;
        }

        string page = Path.Combine(root, "src", "CushionService", "docs", "developers", "tables.md"),
            text = File.ReadAllText(page),
            table = Table(root);
        int from = text.IndexOf(Start, StringComparison.Ordinal) + Start.Length,
            to = text.IndexOf(End, StringComparison.Ordinal);
        Assert.True(from > Start.Length && to > from, "tables.md has no place for the table.");
        if (Environment.GetEnvironmentVariable("CUSHION_WRITE") == "1")
        {
            File.WriteAllText(page, text[..from] + table + text[to..]);
        }
        else
        {
            Assert.Equal(table, text[from..to]);
        }
    }

    private static string Table(string root)
    {
        var table = new StringBuilder("\n| construction | outlines | closures | fields of its own | file |\n|---|---|---|---|---|\n");
        foreach (IConstruction construction in ConstructionRegistry.All)
        {
            ConstructionOffer offer = construction.Offer;
            string file = $"src/CushionService.Engine/Patterns/Constructions/{construction.GetType().Name}.cs";
            Assert.True(File.Exists(Path.Combine(root, file)), $"{file} is not there.");
            string outlines =
                offer.Outlines.Length == Enum.GetValues<Engine.Specifications.Outlines.OutlineKind>().Length
                    ? "all"
                    : string.Join(", ", offer.Outlines.Select(Word));
            string closures = string.Join(
                "; ",
                offer.Closures.Select(closure => $"{Word(closure.Kind)} ({string.Join(", ", closure.Sides.Select(Word))})")
            );
            string fields = string.Join(
                ", ",
                (string[])
                    [
                        .. offer.Thickness ? ["thickness"] : Array.Empty<string>(),
                        .. offer.Fields.Select(field => Word(field.Field) + (field.Required ? " *" : "")),
                    ]
            );
            table.Append($"| `{Word(offer.Kind)}` | {outlines} | {closures} | {fields} | `{file}` |\n");
        }

        return table.ToString();
    }

    private static string Word<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString());
}
