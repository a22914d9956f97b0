using System.Text.RegularExpressions;
using CushionService.Contract.Answers;
using CushionService.Engine.Messages;
using CushionService.Wording;

namespace CushionService.Tests.Languages;

/// <summary>The catalogue in another language has the same fields and choices, and its own words for what they are.</summary>
public sealed partial class CatalogueLanguageTests
{
    [Theory]
    [InlineData(Language.German)]
    [InlineData(Language.French)]
    [InlineData(Language.Spanish)]
    public void It_differs_in_sentences_alone(object language)
    {
        CatalogueAnswer english = CatalogueWording.In(Language.English),
            other = CatalogueWording.In((Language)language);

        Assert.Equal(english.Fields.Select(field => field.Pointer), other.Fields.Select(field => field.Pointer));
        Assert.Equal(english.Fields.SelectMany(field => field.Choices), other.Fields.SelectMany(field => field.Choices));
        Assert.Equal(english.Constructions.Select(one => one.Kind), other.Constructions.Select(one => one.Kind));
        Assert.All(other.Constructions, one => Assert.DoesNotMatch(English(), one.Description));
        Assert.All(other.Fields, field => Assert.DoesNotMatch(English(), $"{field.Description} {field.Default}"));
        Assert.All(
            english.Fields.Zip(other.Fields).Where(pair => pair.First.Description.Length > 0),
            pair => Assert.NotEqual(pair.First.Description, pair.Second.Description)
        );
    }

    [GeneratedRegex(@"\b(the|of|and|with|must|is|are|each|from|by|this|that|when|which|in a metric order)\b", RegexOptions.IgnoreCase)]
    private static partial Regex English();
}
