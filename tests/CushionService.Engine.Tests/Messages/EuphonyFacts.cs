using CushionService.Engine.Measures;
using CushionService.Engine.Messages;

namespace CushionService.Engine.Tests.Messages;

/// <summary>Small words before what is written into a sentence.</summary>
public sealed class EuphonyFacts
{
    // Real Academia Española, Diccionario panhispánico de dudas, y and o.
    [Theory]
    [InlineData("círculo u óvalo", "círculo", "óvalo")]
    [InlineData("rectángulo o círculo", "rectángulo", "círculo")]
    [InlineData("mujer u hombre", "mujer", "hombre")]
    [InlineData("7 u 8", "7", "8")]
    [InlineData("10 u 11", "10", "11")]
    [InlineData("10 o 110", "10", "110")]
    public void Spanish_o_is_u_before_the_sound_of_o(string text, params string[] words) =>
        Assert.Equal(text, Spanish(Conjunction.Or, words));

    [Theory]
    [InlineData("padre e hijo", "padre", "hijo")]
    [InlineData("derecha e izquierda", "derecha", "izquierda")]
    [InlineData("agua y hielo", "agua", "hielo")]
    [InlineData("arriba y abajo", "arriba", "abajo")]
    [InlineData("uno, dos e interior", "uno", "dos", "interior")]
    public void Spanish_y_is_e_before_the_sound_of_i(string text, params string[] words) =>
        Assert.Equal(text, Spanish(Conjunction.And, words));

    [Theory]
    [InlineData("Boutonnières de ", "Boutonnières d’env. 4,8 cm")]
    [InlineData("Un volant de ", "Un volant d’env. 4,8 cm")]
    [InlineData("Coudre le code ", "Coudre le code env. 4,8 cm")]
    [InlineData("Coudre ", "Coudre env. 4,8 cm")]
    [InlineData("de ", "d’env. 4,8 cm")]
    public void French_de_loses_its_vowel_before_a_rounded_length(string before, string text) =>
        Assert.Equal(text, Written(Language.French, before, MessageArgument.Of(Length.FromMillimetres(47.62m))));

    [Fact]
    public void French_de_stays_before_a_number() =>
        Assert.Equal("Un pli de 5 cm", Written(Language.French, "Un pli de ", MessageArgument.Of(Length.FromMillimetres(50))));

    [Theory]
    [InlineData(Language.French, "a\u00a0; b")]
    [InlineData(Language.Spanish, "a; b")]
    public void A_list_of_needs_has_the_languages_semicolon(Language language, string text) =>
        Assert.Equal(text, List(language, Conjunction.Semicolon, ["a", "b"]));

    [Theory]
    [InlineData(Language.English, "5 %")]
    [InlineData(Language.French, "5\u00a0%")]
    [InlineData(Language.Spanish, "5\u00a0%")]
    public void A_percentage_does_not_break_over_a_line(Language language, string text) =>
        Assert.Equal(text, Written(language, "", MessageArgument.Percent(Fraction.Of(1, 20))));

    private static string Spanish(Conjunction conjunction, string[] words) => List(Language.Spanish, conjunction, words);

    private static string List(Language language, Conjunction conjunction, string[] words)
    {
        MessagePart list = MessagePart.List(0, conjunction);
        var template = new MessageTemplate("test.list", ["words"], [(Language.English, [list]), (language, [list])]);
        return new MessageWriter(language, LengthUnit.Centimetre).Text(
            new Message(template, [MessageArgument.List(words, MessageArgument.Id)])
        );
    }

    private static string Written(Language language, string before, MessageArgument value)
    {
        MessagePart[] parts = before.Length == 0 ? [MessagePart.Value(0)] : [MessagePart.Text(before), MessagePart.Value(0)];
        var template = new MessageTemplate("test.value", ["value"], [(Language.English, [.. parts]), (language, [.. parts])]);
        return new MessageWriter(language, LengthUnit.Centimetre).Text(new Message(template, [value]));
    }
}
