namespace CushionService.Engine.Messages;

/// <summary>How languages write numbers and lists. The service runs without the system's cultures, so that every machine writes
/// the same.</summary>
internal static class LanguageText
{
    /// <summary>A number or a measure with a decimal point, as the language writes it.</summary>
    public static string Number(Language language, string text) => language == Language.English ? text : text.Replace('.', ',');

    /// <summary>What comes between two entries of a list.</summary>
    public static string Between(Conjunction conjunction) =>
        conjunction switch
        {
            Conjunction.Sum => " + ",
            Conjunction.Semicolon => "; ",
            _ => ", ",
        };

    /// <summary>What comes before the last entry of a list.</summary>
    public static string BeforeLast(Language language, Conjunction conjunction) =>
        (conjunction, language) switch
        {
            (Conjunction.None or Conjunction.Sum or Conjunction.Semicolon, _) => Between(conjunction),
            (Conjunction.And, Language.German) => " und ",
            (Conjunction.And, Language.French) => " et ",
            (Conjunction.And, Language.Spanish) => " y ",
            (Conjunction.And, _) => " and ",
            (_, Language.German) => " oder ",
            (_, Language.French) => " ou ",
            (_, Language.Spanish) => " o ",
            _ => " or ",
        };
}
