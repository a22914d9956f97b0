using System.Text.RegularExpressions;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;

namespace CushionService.Tests.Wording;

/// <summary>Every message of every resource file is written well with whatever values the code may pass.</summary>
public sealed partial class EveryMessageTests
{
    private const int Draws = 60;
    public static TheoryData<string> Names => [.. MessageSamples.Makers.Select(MessageSamples.NameOf)];

    [Fact]
    public void The_cautions_are_among_them() =>
        Assert.Contains("CautionTexts.get_Infants", MessageSamples.Makers.Select(MessageSamples.NameOf));

    [Theory]
    [MemberData(nameof(Names))]
    public void A_message_is_written_well_in_every_language(string name)
    {
        for (var draw = 0; draw < Draws; draw++)
        {
            var random = new Random(draw);
            Message message = MessageSamples.Draw(name, random, "seat", MessageSamples.LongName);
            foreach (Language language in Enum.GetValues<Language>())
            {
                string text = new MessageWriter(language, draw % 2 == 0 ? LengthUnit.Inch : LengthUnit.Centimetre).Text(message);

                Assert.DoesNotMatch(Faults(), text);
                Assert.NotEqual("", text);
            }
        }
    }

    [Theory]
    [InlineData("Sew {n} buttons.")]
    [InlineData("Sew  2 buttons.")]
    [InlineData("Sew 2 buttons .")]
    [InlineData("Sew 2 buttons ")]
    [InlineData("Sew # buttons.")]
    public void What_is_looked_for_is_found(string text) => Assert.Matches(Faults(), text);

    // A name of the grammar left over, two spaces, a space before a comma or a full stop, a space at an end.
    [GeneratedRegex(@"[{}#]|  | [.,;:]|^\s|\s$|\.\.$")]
    private static partial Regex Faults();
}
