using CushionService.Engine.Geometry;
using CushionService.Engine.Instructions;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Specifications.Trimmings;
using CushionService.Nesting;

namespace CushionService.Engine.Tests.Messages;

/// <summary>Words of the contract, parts and edges are read in the sentence's language, and in English as the contract spells
/// them.</summary>
public sealed class VocabularyFacts
{
    private static readonly Type[] Spoken =
    [
        typeof(SaleUnit),
        typeof(ClosureKind),
        typeof(FillKind),
        typeof(OutlineKind),
        typeof(Side),
        typeof(StitchType),
        typeof(Construction),
        typeof(MaterialKind),
        typeof(EdgingKind),
        typeof(EdgingPlace),
        typeof(HandleKind),
        typeof(RawEdgeFinish),
        typeof(Effort),
        typeof(Tool),
        typeof(PartKind),
    ];

    private static readonly PartName Boxing = new(PartKind.Boxing) { Number = 2, IsInner = true };

    [Fact]
    public void Every_word_that_sentences_write_has_words_in_every_language()
    {
        string[] keys =
        [
            .. Spoken.SelectMany(type =>
                Enum.GetNames(type).Select(name => $"{MessageArgument.Kebab(type.Name)}-{MessageArgument.Kebab(name)}")
            ),
        ];
        Assert.All(keys, key => Assert.NotNull(WordTexts.Find(key)));
    }

    [Fact]
    public void Every_word_of_an_edge_has_words() =>
        Assert.All(Enum.GetNames<EdgeWord>().Skip(1), name => Assert.NotNull(EdgeTexts.Find(MessageArgument.Kebab(name))));

    [Theory]
    [InlineData("English", "inner-boxing-2")]
    [InlineData("German", "Steg 2 des Inletts")]
    [InlineData("French", "plate-bande 2 de la housse intérieure")]
    [InlineData("Spanish", "banda lateral 2 de la funda interior")]
    public void A_part_is_read_in_the_language_of_the_sentence(string language, string text) =>
        Assert.Equal(text, new MessageWriter(Enum.Parse<Language>(language), LengthUnit.Inch).Text(Said(MessageArgument.Name(Boxing))));

    [Theory]
    [InlineData("English", "side-3-top")]
    [InlineData("German", "Seite 3 oben")]
    [InlineData("French", "côté 3 supérieur")]
    [InlineData("Spanish", "lado 3 superior")]
    public void So_is_an_edge(string language, string text)
    {
        EdgeName edge = new EdgeName(EdgeWord.Side, 3).With(EdgeWord.Top);
        Assert.Equal(text, new MessageWriter(Enum.Parse<Language>(language), LengthUnit.Inch).Text(Said(MessageArgument.Name(edge))));
    }

    // The same sentence in every language: the value alone.
    private static Message Said(MessageArgument value) =>
        new(
            new MessageTemplate(
                "test.value",
                ["value"],
                [
                    (Language.English, [MessagePart.Value(0)]),
                    (Language.German, [MessagePart.Value(0)]),
                    (Language.French, [MessagePart.Value(0)]),
                    (Language.Spanish, [MessagePart.Value(0)]),
                ]
            ),
            [value]
        );
}
