using CushionService.Engine.Measures;

namespace CushionService.Engine.Messages;

/// <summary>How languages write numbers and lists. The service runs without the system's cultures, so that every machine writes
/// the same.</summary>
internal static class LanguageText
{
    /// <summary>A number or a measure as the language writes it: its decimal sign, and what says that the measure is rounded.</summary>
    /// <param name="language">The language.</param>
    /// <param name="text">As English writes it: 15.5, about 3 1/4 in.</param>
    public static string Number(Language language, string text)
    {
        if (language == Language.English)
        {
            return text;
        }

        bool rounded = text.StartsWith(LengthText.Rounding, StringComparison.Ordinal);
        string exact = (rounded ? text[LengthText.Rounding.Length..] : text)
            .Replace('.', ',')
            .Replace(" %", "\u00a0%", StringComparison.Ordinal);
        return (rounded ? About(language) : "") + (language == Language.German ? Zoll(exact) : exact);
    }

    /// <summary>What comes between two entries of a list.</summary>
    public static string Between(Language language, Conjunction conjunction) =>
        conjunction switch
        {
            Conjunction.Sum => " + ",
            Conjunction.Semicolon => language == Language.French ? "\u00a0; " : "; ",
            Conjunction.To when language == Language.English => " to ",
            Conjunction.To when language == Language.German => " – ",
            _ => ", ",
        };

    /// <summary>What comes before the last entry of a list.</summary>
    public static string BeforeLast(Language language, Conjunction conjunction) =>
        (conjunction, language) switch
        {
            (Conjunction.None or Conjunction.Sum or Conjunction.Semicolon or Conjunction.To, _) => Between(language, conjunction),
            (Conjunction.And, Language.German) => " und ",
            (Conjunction.And, Language.French) => " et ",
            (Conjunction.And, Language.Spanish) => " y ",
            (Conjunction.And, _) => " and ",
            (_, Language.German) => " oder ",
            (_, Language.French) => " ou ",
            (_, Language.Spanish) => " o ",
            _ => " or ",
        };

    private static string About(Language language) =>
        language switch
        {
            Language.German => "ca. ",
            Language.French => "env. ",
            _ => "aprox. ",
        };

    // In a German sentence the symbol reads as the preposition: "um 1/2 in in die Naht".
    private static string Zoll(string measure) =>
        measure.EndsWith(" in", StringComparison.Ordinal) ? measure[..^2] + "Zoll"
        : measure.EndsWith(" in²", StringComparison.Ordinal) ? measure[..^3] + "Quadratzoll"
        : measure;
}
