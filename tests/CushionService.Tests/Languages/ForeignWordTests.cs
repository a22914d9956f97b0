using System.Text.RegularExpressions;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Tests.Wording;

namespace CushionService.Tests.Languages;

/// <summary>What may not be in a sentence: a word of another language, a unit of the other system, a name that mixes with the sentence
/// round it.</summary>
public sealed partial class ForeignWordTests
{
    private const int Draws = 40;

    // A name in Hebrew, which is written from right to left, with digits, which are not.
    private const string RightToLeft = "כרית 12";

    public static TheoryData<string> Names => [.. MessageSamples.Makers.Select(MessageSamples.NameOf)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_sentence_has_no_word_of_English(string name)
    {
        for (int draw = 0; draw < Draws; draw++)
        {
            Message message = MessageSamples.Draw(name, new Random(draw), "X-17");
            Assert.All(
                [Language.German, Language.French, Language.Spanish],
                language => Assert.DoesNotMatch(English(), new MessageWriter(language, LengthUnit.Centimetre).Text(message))
            );
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_sentence_of_a_metric_order_has_no_inch(string name)
    {
        for (int draw = 0; draw < Draws; draw++)
        {
            Message message = MessageSamples.Draw(name, new Random(draw), "X-17");
            Assert.All(
                Enum.GetValues<Language>(),
                language => Assert.DoesNotMatch(Inches(), new MessageWriter(language, LengthUnit.Millimetre).Text(message))
            );
        }
    }

    // First strong isolate, and its end (Unicode Standard Annex 9, section 2.4): so that a pseudo-language from right to left, or a name in
    // such a script, does not turn what is beside it.
    [Theory]
    [MemberData(nameof(Names))]
    public void A_name_from_right_to_left_is_isolated(string name)
    {
        for (int draw = 0; draw < Draws; draw++)
        {
            Message message = MessageSamples.Draw(name, new Random(draw), RightToLeft);
            Assert.All(
                Enum.GetValues<Language>(),
                language =>
                {
                    string text = new MessageWriter(language, LengthUnit.Inch).Text(message);
                    string isolated = text.Replace($"\u2068{RightToLeft}\u2069", "", StringComparison.Ordinal);
                    Assert.DoesNotContain(RightToLeft, isolated, StringComparison.OrdinalIgnoreCase);
                }
            );
        }
    }

    [Theory]
    [InlineData("Der Stoff must breiter sein.")]
    [InlineData("Couper the tissu.")]
    public void An_English_word_is_found(string text) => Assert.Matches(English(), text);

    [Theory]
    [InlineData("44 in")]
    [InlineData("3 ½ in breit")]
    [InlineData("44 Zoll")]
    public void An_inch_is_found(string text) => Assert.Matches(Inches(), text);

    // Words of our sentences that are no words of the other three languages.
    [GeneratedRegex(
        @"\b(the|of|and|with|must|is|are|each|from|by|this|that|not|seam|fabric|cushion|welt|boxing|zipper|edge|width|depth|thickness|foam|"
            + "left|right|bottom|corner|cut|sew|upper|lower|inner|outer|when|which|only|leave|there|its|their|about|other|than|"
            + @"at least|at most|allowance|selvedge|knife-edge|hook-and-loop|envelope|buttons|ties|flange|ruffle)\b",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex English();

    // Yards are a unit of sale, and a caller's own.
    [GeneratedRegex(@"[0-9½] ?(in|in²|inch|inches|Zoll|Quadratzoll|ft³|lb|lbf)\b")]
    private static partial Regex Inches();
}
