using CushionService.Engine.Messages;

namespace CushionService.Engine.Tests.Messages;

public sealed class PluralRulesFacts
{
    // Unicode CLDR 48, supplemental data, plural rules for cardinals.
    [Theory]
    [InlineData(Language.English, 0, PluralCategory.Other)]
    [InlineData(Language.English, 1, PluralCategory.One)]
    [InlineData(Language.English, 2, PluralCategory.Other)]
    [InlineData(Language.English, 21, PluralCategory.Other)]
    [InlineData(Language.English, 1_000_000, PluralCategory.Other)]
    [InlineData(Language.German, 0, PluralCategory.Other)]
    [InlineData(Language.German, 1, PluralCategory.One)]
    [InlineData(Language.German, 1_000_000, PluralCategory.Other)]
    [InlineData(Language.French, 0, PluralCategory.One)]
    [InlineData(Language.French, 1, PluralCategory.One)]
    [InlineData(Language.French, 2, PluralCategory.Other)]
    [InlineData(Language.French, 1_000_000, PluralCategory.Many)]
    [InlineData(Language.French, 1_500_000, PluralCategory.Other)]
    [InlineData(Language.Spanish, 0, PluralCategory.Other)]
    [InlineData(Language.Spanish, 1, PluralCategory.One)]
    [InlineData(Language.Spanish, 101, PluralCategory.Other)]
    [InlineData(Language.Spanish, 2_000_000, PluralCategory.Many)]
    public void A_count_has_the_category_of_its_language(Language language, long count, PluralCategory category)
    {
        Assert.Equal(category, PluralRules.Of(language, count));
        Assert.Equal(category, PluralRules.Of(language, -count));
    }
}
