using System.Text.RegularExpressions;
using System.Xml.Linq;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Languages;

/// <summary>No English word is left in a German, French or Spanish message, and none has a key that the English file lacks.</summary>
public sealed partial class TranslationTests
{
    public static TheoryData<string> Files =>
        [
            .. Directory
                .GetFiles(Path.Combine(Repository.Root, "src"), "*Texts.*.resx", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(Repository.Root, file).Replace('\\', '/'))
                .Order(StringComparer.Ordinal),
        ];

    [Fact]
    public void The_steps_are_among_the_files() => Assert.Contains("src/CushionService.Engine/Instructions/StepTexts.de.resx", Files);

    [Theory]
    [MemberData(nameof(Files))]
    public void A_translation_has_no_English_word(string file) =>
        Assert.All(Entries(file), entry => Assert.DoesNotMatch(English(), Literals(entry.Value)));

    [Theory]
    [MemberData(nameof(Files))]
    public void A_translation_is_of_messages_that_exist(string file)
    {
        string english = file[..(file.Length - ".de.resx".Length)] + ".resx";

        Assert.Empty(Entries(file).Keys.Except(Entries(english).Keys));
    }

    [Theory]
    [InlineData("Den Reißverschluss with {count, plural, one {# Schieber} other {# Schiebern}}", true)]
    [InlineData("{kind, select, each {the piece} other {Stück}}", true)]
    [InlineData("{parts, list, and} {unit, select, each {Stück} other {m}} (ISO 4915), in on as", false)]
    public void An_English_word_is_found(string text, bool found) => Assert.Equal(found, English().IsMatch(Literals(text)));

    // Without the names of arguments and the signs of the grammar; the words of cases stay, of which none is looked for.
    private static string Literals(string value) => Grammar().Replace(value, " ");

    private static Dictionary<string, string> Entries(string file) =>
        XDocument
            .Load(Path.Combine(Repository.Root, file))
            .Root!.Elements("data")
            .ToDictionary(data => (string)data.Attribute("name")!, data => (string)data.Element("value")!);

    // Common words that are none in German, French or Spanish, nor a word of the contract.
    [GeneratedRegex(
        @"(?<![\w-])(the|and|of|with|from|is|are|that|this|which|must|its|their|than|where|when|for|by|have|be|it|what|how|if)(?![\w-])",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex English();

    [GeneratedRegex(@"\{\s*\w+\s*(\}|,\s*(plural|select)\s*,|,\s*list\s*,\s*\w+\s*\})")]
    private static partial Regex Grammar();
}
