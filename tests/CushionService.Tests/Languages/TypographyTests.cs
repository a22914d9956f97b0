using System.Text.RegularExpressions;
using System.Xml.Linq;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Languages;

/// <summary>French and Spanish messages have the signs of their languages.</summary>
/// <remarks>Lexique des règles typographiques en usage à l'Imprimerie nationale, from memory: a space before a colon, a semicolon, a
/// question and an exclamation mark, and within quotation marks. Spanish has none.</remarks>
public sealed partial class TypographyTests
{
    [Fact]
    public void French_has_a_space_before_its_signs_and_curly_apostrophes() =>
        Assert.All(Values("fr"), value => Assert.DoesNotMatch(NotFrench(), WithoutArguments(value)));

    [Fact]
    public void Spanish_has_no_space_before_its_signs_nor_within_quotation_marks() =>
        Assert.All(Values("es"), value => Assert.DoesNotMatch(NotSpanish(), WithoutArguments(value)));

    [Theory]
    [InlineData("Choisissez {choices, list, or}; il manque 5 cm.", true)]
    [InlineData("{cushion}: {step}", true)]
    [InlineData("L'autre bord", true)]
    [InlineData("Le tissu «{fabric}»", true)]
    [InlineData("Le tissu « {fabric} » : {open, select, true {ouvert ;} other {}} nommez une pièce (?piece=), l’une des 2.", false)]
    public void What_is_not_French_is_found(string text, bool found) => Assert.Equal(found, NotFrench().IsMatch(WithoutArguments(text)));

    [Theory]
    [InlineData("Elija {choices, list, or} ; faltan 5 cm.", true)]
    [InlineData("La tela « {fabric} »", true)]
    [InlineData("La tela «{fabric}»: {open, select, true {abierta;} other {}} nombre una pieza (?piece=).", false)]
    public void What_is_not_Spanish_is_found(string text, bool found) => Assert.Equal(found, NotSpanish().IsMatch(WithoutArguments(text)));

    private static IEnumerable<string> Values(string language) =>
        Directory
            .GetFiles(Path.Combine(Repository.Root, "src"), $"*Texts.{language}.resx", SearchOption.AllDirectories)
            .SelectMany(file => XDocument.Load(file).Root!.Elements("data").Select(data => (string)data.Element("value")!));

    private static string WithoutArguments(string value) => Argument().Replace(value, "x");

    [GeneratedRegex(@"[^\s(][;:!?](?![\w/])|'|«\S|[^\s]»")]
    private static partial Regex NotFrench();

    [GeneratedRegex(@"\s[;:!]|'|«\s|\s»")]
    private static partial Regex NotSpanish();

    [GeneratedRegex(@"\{\w+(\}|,\s*list\s*,\s*\w+\s*\})")]
    private static partial Regex Argument();
}
