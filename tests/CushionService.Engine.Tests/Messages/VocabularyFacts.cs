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
    [InlineData("French", "du côté 3 supérieur")]
    [InlineData("Spanish", "del lado 3 superior")]
    public void So_is_an_edge(string language, string text)
    {
        EdgeName edge = new EdgeName(EdgeWord.Side, 3).With(EdgeWord.Top);
        Assert.Equal(text, new MessageWriter(Enum.Parse<Language>(language), LengthUnit.Inch).Text(Said(MessageArgument.Name(edge))));
    }

    [Theory]
    [InlineData("boxing (panel 2)", "boxing-2")]
    [InlineData("side right", "right")]
    [InlineData("right end", "right-end")]
    public void On_paper_a_part_is_spelled_in_English_too(string text, string name)
    {
        PartName part = (
            (PartName[])[PartName.Boxing with { Stretch = 2 }, PartName.Side(EdgeName.Right), PartName.End(EdgeName.Right)]
        ).Single(part => part.ToString() == name);

        Assert.Equal(text, new MessageWriter(Language.English, LengthUnit.Inch, spellsNames: true).Text(Said(MessageArgument.Name(part))));
    }

    [Fact]
    public void So_is_an_edge_on_paper() =>
        Assert.Equal(
            "left return top",
            new MessageWriter(Language.English, LengthUnit.Inch, spellsNames: true).Text(
                Said(MessageArgument.Name(EdgeName.Left.With(EdgeWord.Return).With(EdgeWord.Top)))
            )
        );

    // An adjective follows "panneau latéral" and "paño lateral"; a noun needs its article: "the side panel of the right step".
    [Theory]
    [InlineData("French", "panneau latéral du décrochement droit", "panneau latéral de l’oreille droite", "panneau latéral du bout droit")]
    [InlineData("Spanish", "paño lateral del escalón derecho", "paño lateral de la oreja derecha", "paño lateral del extremo derecho")]
    [InlineData("German", "Seitenteil Absatz rechts", "Seitenteil Ohr rechts", "Seitenteil Ende rechts")]
    public void A_side_panel_of_a_step_has_an_article_like_that_of_an_ear(string language, string step, string ear, string arm) =>
        Assert.Equal(
            [step, ear, arm],
            ((EdgeWord[])[EdgeWord.Step, EdgeWord.Ear, EdgeWord.End]).Select(word =>
                new MessageWriter(Enum.Parse<Language>(language), LengthUnit.Inch).Text(
                    Said(MessageArgument.Name(PartName.Side(EdgeName.Right.With(word))))
                )
            )
        );

    // "Pestaña" is feminine and so cannot have the edge's adjective; "dessous" is masculine.
    [Fact]
    public void An_adjective_agrees_with_the_part()
    {
        var flange = new PartName(PartKind.Flange) { Run = EdgeName.Front };
        PartName half = PartName.Bottom with { Half = FaceHalf.Right };

        Assert.Equal(
            "pestaña del borde delantero",
            new MessageWriter(Language.Spanish, LengthUnit.Inch).Text(Said(MessageArgument.Name(flange)))
        );
        Assert.Equal("dessous droit", new MessageWriter(Language.French, LengthUnit.Inch).Text(Said(MessageArgument.Name(half))));
    }

    [Theory]
    [InlineData("foam", "Schaumstoff")]
    [InlineData("end-cord", "Abbindeschnur")]
    [InlineData("hook-and-loop-tape", "Klettband")]
    [InlineData("HR 35", "HR 35")]
    public void What_is_bought_has_a_word_where_its_name_is_the_services_own(string item, string word)
    {
        Assert.Equal(word, new MessageWriter(Language.German, LengthUnit.Inch).Text(Said(MessageArgument.Item(item))));
        Assert.Equal(item, new MessageWriter(Language.English, LengthUnit.Inch).Text(Said(MessageArgument.Item(item))));
    }

    [Fact]
    public void Every_filling_has_a_word_to_be_bought_by() =>
        Assert.All(Enum.GetNames<LooseFill>(), name => Assert.NotNull(WordTexts.Find($"item-{MessageArgument.Kebab(name)}")));

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
