using CushionService.Engine.Geometry;

namespace CushionService.Engine.Messages;

/// <summary>The words of languages for what the contract spells in English: its words, and the edges of panels.</summary>
internal static class Vocabulary
{
    /// <summary>A word of the contract; in English, and where a language has none, as it is.</summary>
    public static string Of(ContractWord word, Language language) =>
        language == Language.English || WordTexts.Find(word.Key) is not { } words ? word.Text : Words(words, language);

    /// <summary>An edge: its words from the general to the particular, with its number behind the first.</summary>
    public static string Of(EdgeName edge, Language language)
    {
        if (language == Language.English)
        {
            return edge.ToString();
        }

        string text = "";
        for (int place = 0; edge.At(place) is var word and not EdgeWord.None; place++)
        {
            string own = Words(EdgeTexts.Find(MessageArgument.Kebab(word.ToString()))!, language);
            text = place == 0 ? own : $"{text} {own}";
            text = place == 0 && edge.Number > 0 ? $"{text} {edge.Number}" : text;
        }

        return text;
    }

    // A message without arguments is one text.
    private static string Words(Message message, Language language) => message.Template.In(language)[0].Words;
}
