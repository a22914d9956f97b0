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

    // The catalogue's descriptions are of no order, a unit of sale is the caller's, and papers are called by their inches.
    private static readonly string[] OfBothSystems =
    [
        "DescriptionTexts.",
        "DefaultTexts.",
        "LessonTexts.",
        "FieldTexts.SaleRange",
        "FormTexts.get_",
    ];

    public static TheoryData<string> MetricNames =>
        [
            .. MessageSamples
                .Makers.Select(MessageSamples.NameOf)
                .Where(name => !OfBothSystems.Any(other => name.StartsWith(other, StringComparison.Ordinal))),
        ];

    public static TheoryData<string> Names => [.. MessageSamples.Makers.Select(MessageSamples.NameOf)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_sentence_has_no_word_of_English(string name)
    {
        for (int draw = 0; draw < Draws; draw++)
        {
            Message message = MessageSamples.Draw(name, new Random(draw), "Xq");
            // What has no translation is read in English: MissingKeyTests knows it.
            Language[] written =
            [
                .. Enum.GetValues<Language>().Where(one => one != Language.English && message.Template.Written(one) == one),
            ];
            Assert.All(
                written,
                language => Assert.DoesNotMatch(English(), new MessageWriter(language, LengthUnit.Centimetre).Text(message))
            );
        }
    }

    [Theory]
    [MemberData(nameof(MetricNames))]
    public void A_sentence_of_a_metric_order_has_no_inch(string name)
    {
        for (int draw = 0; draw < Draws; draw++)
        {
            Message message = MessageSamples.Draw(name, new Random(draw), "Xq");
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

    // French has the word too.
    [Theory]
    [InlineData("ShapeTexts.NeedsRectangle")]
    [InlineData("TrimTexts.get_DeepTufts")]
    public void A_wanted_outline_is_called_by_the_word_of_the_language(string name)
    {
        // The outline that was given is drawn at random, and is another.
        Message message = Enumerable
            .Range(0, Draws)
            .Select(draw => MessageSamples.Draw(name, new Random(draw), "Xq"))
            .First(message => message.Arguments.All(argument => $"{argument.Value}" != "rectangle"));

        Assert.Contains("„Rechteck“", new MessageWriter(Language.German, LengthUnit.Centimetre).Text(message), StringComparison.Ordinal);
        string spanish = new MessageWriter(Language.Spanish, LengthUnit.Centimetre).Text(message);
        Assert.Contains("«rectángulo»", spanish, StringComparison.Ordinal);
        Assert.DoesNotContain("rectangle", spanish, StringComparison.Ordinal);
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

    // Words of our sentences that are neither of the other three languages nor the contract's: its words may be named as they are sent.
    [GeneratedRegex(
        @"(?<![\w-])(the|of|and|with|must|is|are|each|from|by|this|that|not|seam|fabric|boxing|edge|width|thickness|right|bottom|corner|"
            + "sew|upper|lower|inner|outer|when|which|only|leave|there|its|their|about|other|than|at least|at most|allowance|selvedge)"
            + @"(?![\w-])",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex English();

    // Yards are a unit of sale, and a caller's own.
    [GeneratedRegex(@"(?<![\w-])[0-9]+[0-9 .,/½]* ?(in|in²|inch|inches|Zoll|Quadratzoll|ft³|lb|lbf)\b")]
    private static partial Regex Inches();
}
