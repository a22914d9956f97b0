using CushionService.Engine.Messages;
using CushionService.Languages;

namespace CushionService.Tests.Languages;

/// <summary>The reader's language from <c>Accept-Language</c> (RFC 9110, section 12.5.4; RFC 4647, section 3.4).</summary>
public sealed class LanguageRangesTests
{
    [Theory]
    [InlineData(null, "en")]
    [InlineData("", "en")]
    [InlineData("*", "en")]
    [InlineData("de", "de")]
    [InlineData("DE-at", "de")]
    [InlineData("es-419", "es")]
    [InlineData("fr-CH, fr;q=0.9, en;q=0.8, de;q=0.7, *;q=0.5", "fr")]
    [InlineData("en;q=0.5, de;q=0.9", "de")]
    [InlineData("it, nl;q=0.9", "en")]
    [InlineData("it, es;q=0.2, en;q=0.1", "es")]
    [InlineData("de;q=0, *", "en")]
    [InlineData("en;q=0, *;q=0.3", "de")]
    [InlineData("en;q=0.1, *;q=0.9", "de")]
    [InlineData("en;q=0", "en")]
    [InlineData(" de ; q=0.7 ,fr ;Q=0.8", "fr")]
    [InlineData("de;q=0.8,fr;q=0.8", "de")]
    [InlineData("deu, den-de", "en")]
    [InlineData("de;q=2, fr;q=-1, es;q=x, en", "en")]
    [InlineData(",,;q=1,de", "de")]
    public void The_preferred_of_the_languages_written(string? header, string tag) =>
        Assert.Equal(tag, LanguageTags.Of(LanguageRanges.Choose(header)));

    [Fact]
    public void Several_lines_of_the_header_are_one_list() =>
        Assert.Equal(Language.Spanish, LanguageRanges.Choose(new(["en;q=0.3", "es;q=0.5"])));

    [Fact]
    public void To_choose_allocates_nothing()
    {
        Microsoft.Extensions.Primitives.StringValues header = "de-AT,de;q=0.9,en-GB;q=0.8,en;q=0.7";
        LanguageRanges.Choose(header);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100; i++)
        {
            LanguageRanges.Choose(header);
        }

        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }

    [Fact]
    public void Every_language_has_a_tag() => Assert.Equal(Enum.GetValues<Language>().Length, LanguageTags.All.Count);
}
