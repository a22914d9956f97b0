using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Tests.Messages;

/// <summary>What the templates of <c>SampleTexts.resx</c> become, read by the generator as those of the service are.</summary>
public sealed class TemplateFacts
{
    private static readonly MessageWriter English = new(Language.English, LengthUnit.Inch);
    private static readonly MessageWriter Metric = new(Language.English, LengthUnit.Centimetre);
    private static readonly MessageWriter German = new(Language.German, LengthUnit.Centimetre);
    private static readonly PartName[] Run = [PartName.Top, PartName.Bottom, PartName.Boxing];

    [Fact]
    public void A_value_on_two_lines_is_one_line() => Assert.Equal("A zipper's pull is a small part.", English.Text(SampleTexts.Plain));

    [Theory]
    [InlineData(1, 0, "Join top (0 joins).")]
    [InlineData(1, 1, "Join top (1 join).")]
    [InlineData(2, 2, "Join top and bottom (2 joins).")]
    [InlineData(3, 21, "Join top, bottom and boxing (21 joins).")]
    public void A_list_ends_with_its_word_and_a_count_has_its_form(int parts, int joins, string text) =>
        Assert.Equal(text, English.Text(SampleTexts.Joined(Run.Take(parts), joins)));

    [Theory]
    [InlineData(0, "Sew no button.")]
    [InlineData(1, "Sew 1 button.")]
    [InlineData(2, "Sew a pair of buttons.")]
    [InlineData(5, "Sew 5 buttons.")]
    [InlineData(1_000_000, "Sew 1000000 buttons.")]
    public void A_count_may_have_words_of_its_own(long count, string text) => Assert.Equal(text, English.Text(SampleTexts.Buttons(count)));

    [Fact]
    public void What_is_absent_leaves_nothing_behind()
    {
        Length length = Length.FromInches(15.5m);

        Assert.Equal("15 1/2 in laid out", English.Text(SampleTexts.Laid(length, null, false)));
        Assert.Equal("15 1/2 in laid out ÷ (1 − 3 % shrinkage)", English.Text(SampleTexts.Laid(length, Fraction.Of(3, 100), false)));
        Assert.Equal("15 1/2 in laid out, twice", English.Text(SampleTexts.Laid(length, null, true)));
    }

    [Fact]
    public void Measures_are_written_in_the_units_of_the_order()
    {
        Message seam = SampleTexts.Seam(
            Side.Front,
            "seat",
            Area.Of(Length.FromInches(10), Length.FromInches(20)),
            new Volume(28_316_846.592m),
            new Mass(Mass.GramsInPound),
            new Force(4.4482216152605m * 35),
            new Money(12.5m, new Currency("EUR")),
            new SaleAmount(Fraction.Of(9, 8), SaleUnit.Yd),
            1.23456m,
            "Depth",
            EdgeName.Left
        );

        Assert.Equal(
            "Leave a gap in the front seam of seat; it is 200 in², 1 ft³, 1.00 lb, 35 lbf, 12.50, 1 1/8 yd, 1.2346 of Depth: left.",
            English.Text(seam)
        );
        Assert.Equal(
            "Leave a gap in the front seam of seat; it is 1290.32 cm², 28.317 l, 0.454 kg, 156 N, 12.50, 1 1/8 yd, 1.2346 of Depth: left.",
            Metric.Text(seam)
        );
    }

    [Fact]
    public void A_message_may_hold_messages()
    {
        Assert.Equal("seat: as ordered", English.Text(SampleTexts.Reasons("seat", [], null)));
        Assert.Equal(
            "seat: Sew 1 button., Sew 5 buttons.; Sew no button.",
            English.Text(SampleTexts.Reasons("seat", [SampleTexts.Buttons(1), SampleTexts.Buttons(5)], SampleTexts.Buttons(0)))
        );
    }

    [Fact]
    public void Apostrophes_quote_the_signs_of_the_grammar_alone() =>
        Assert.Equal(
            "Write {name} as it's said, 'so', 3 of #, one of front or back.",
            English.Text(SampleTexts.Quoted(3, [Side.Front, Side.Back]))
        );

    [Fact]
    public void A_translation_orders_its_words_and_writes_numbers_its_own_way()
    {
        Assert.Equal("3 Nähte: Oberseite und Unterseite verbinden.", German.Text(SampleTexts.Joined(Run.Take(2), 3)));
        Assert.Equal("38,5 cm ausgelegt", German.Text(SampleTexts.Laid(Length.FromMillimetres(385), null, false)));
    }

    [Theory]
    [InlineData(333.333, LengthUnit.Centimetre, "ca. 33,3 cm ausgelegt")]
    [InlineData(333.333, LengthUnit.Inch, "ca. 13 1/8 Zoll ausgelegt")]
    [InlineData(393.7, LengthUnit.Inch, "15 1/2 Zoll ausgelegt")]
    public void A_rounded_measure_and_an_inch_have_the_words_of_the_language(double millimetres, LengthUnit unit, string text) =>
        Assert.Equal(
            text,
            new MessageWriter(Language.German, unit).Text(SampleTexts.Laid(Length.FromMillimetres((decimal)millimetres), null, false))
        );

    [Fact]
    public void What_has_no_translation_is_written_in_English_throughout() =>
        Assert.Equal(
            "Write {name} as it's said, 'so', 3 of #, one of front or back.",
            German.Text(SampleTexts.Quoted(3, [Side.Front, Side.Back]))
        );

    [Fact]
    public void A_key_names_its_area_and_arguments_their_names()
    {
        Message message = SampleTexts.Joined(Run, 2);

        Assert.Equal("sample.joined", message.Key);
        Assert.Equal("run joins", string.Join(' ', message.Template.Names));
        Assert.Equal([ArgumentKind.List, ArgumentKind.Count], message.Arguments.Select(argument => argument.Kind));
    }

    [Fact]
    public void Messages_are_equal_when_key_and_values_are()
    {
        Assert.Equal(SampleTexts.Joined(Run, 2), SampleTexts.Joined([.. Run], 2));
        Assert.Equal(SampleTexts.Joined(Run, 2).GetHashCode(), SampleTexts.Joined([.. Run], 2).GetHashCode());
        Assert.NotEqual(SampleTexts.Joined(Run, 2), SampleTexts.Joined(Run, 3));
        Assert.NotEqual(SampleTexts.Joined(Run, 2), SampleTexts.Joined(Run.Take(2), 2));
        Assert.Equal(SampleTexts.Reasons("a", [], SampleTexts.Buttons(1)), SampleTexts.Reasons("a", [], SampleTexts.Buttons(1)));
        Assert.NotEqual(SampleTexts.Reasons("a", [], null), SampleTexts.Reasons("a", [], SampleTexts.Buttons(1)));
        Assert.NotEqual(SampleTexts.Buttons(1), SampleTexts.Plain);
    }
}
