using CushionService.Engine.Geometry;

namespace CushionService.Engine.Messages;

/// <summary>The words of languages for what the contract spells in English: its words, and the edges of panels.</summary>
internal static class Vocabulary
{
    /// <summary>A word of the contract; in English, and where a language has none, as it is.</summary>
    public static string Of(ContractWord word, Language language) =>
        language == Language.English || WordTexts.Find(word.Key) is not { } words ? word.Text : Words(words, language);

    /// <summary>What is bought: in the language's word where its name is the service's own, else as the caller names it.</summary>
    public static string OfItem(string item, Language language) =>
        language != Language.English && (WordTexts.Find($"item-{item}") ?? WordTexts.Find($"material-kind-{item}")) is { } words
            ? Words(words, language)
            : item;

    /// <summary>An edge: its words from the general to the particular, with its number behind the first. A noun after the side that it is
    /// on comes before it: the right return is "du retour droit".</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="language">The language of the sentence.</param>
    /// <param name="spelled">Whether English has the words apart, and not joined as in the answer's name.</param>
    public static string Of(EdgeName edge, Language language, bool spelled)
    {
        if (language == Language.English)
        {
            return spelled ? edge.ToString().Replace('-', ' ') : edge.ToString();
        }

        string text = Word(edge.First, language);
        text = edge.Number > 0 ? $"{text} {edge.Number}" : text;
        for (int place = 1; edge.At(place) is var word and not EdgeWord.None; place++)
        {
            bool isNoun = word == EdgeWord.Mitre || (place == 1 && word is EdgeWord.Return or EdgeWord.Ear or EdgeWord.Step);
            text =
                place == 1 && word == EdgeWord.Ear && edge.First == EdgeWord.Right ? Words(EdgeTexts.RightEar, language)
                : place == 1 && word == EdgeWord.Ear && edge.First == EdgeWord.Left ? Words(EdgeTexts.LeftEar, language)
                : place == 1 && word == EdgeWord.End ? $"{Words(EdgeTexts.ArmEnd, language)} {text}"
                : isNoun ? $"{Word(word, language)} {text}"
                : $"{text} {Word(word, language)}";
        }

        return text;
    }

    private static string Word(EdgeWord word, Language language) =>
        Words(EdgeTexts.Find(MessageArgument.Kebab(word.ToString()))!, language);

    // A message without arguments is one text.
    private static string Words(Message message, Language language) => message.Template.In(language)[0].Words;
}
