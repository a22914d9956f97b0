using System.Xml.Linq;
using CushionService.Contract;

namespace CushionService.Rest.OpenApi;

/// <summary>What the words of an enumeration mean, from its XML documentation. The schema of an enumeration has no
/// place for it but the description.</summary>
internal static class EnumerationComments
{
    /// <summary>The words of an enumeration, each with its meaning, as a list in Markdown.</summary>
    /// <exception cref="KeyNotFoundException">A member has no summary.</exception>
    /// <param name="enumeration">An enumeration of the contract; its words are those of JSON.</param>
    public static string Of(Type enumeration)
    {
        // The build writes the documentation beside the assembly.
        string path = Path.ChangeExtension(enumeration.Assembly.Location, ".xml");
        Dictionary<string, string> summaries = XDocument
            .Load(path)
            .Descendants("member")
            .Where(member => member.Attribute("name")!.Value.StartsWith($"F:{enumeration.FullName}.", StringComparison.Ordinal))
            .ToDictionary(member => member.Attribute("name")!.Value.Split('.')[^1], member => member.Element("summary")!.Value.Trim());
        IEnumerable<string> lines = Enum.GetNames(enumeration).Zip(WordsOf(enumeration), (name, word) => $"- `{word}`: {summaries[name]}");
        return "\n\n" + string.Join('\n', lines);
    }

    // The words as JSON has them; the type is known at run time alone.
    private static IReadOnlyList<string> WordsOf(Type enumeration) =>
        (IReadOnlyList<string>)typeof(Words<>).MakeGenericType(enumeration).GetProperty(nameof(Words<DayOfWeek>.All))!.GetValue(null)!;
}
