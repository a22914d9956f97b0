using CushionService.Engine.Messages;

namespace CushionService.Documents.Sheets;

/// <summary>Languages as documents name them (BCP 47).</summary>
internal static class Codes
{
    /// <summary>The code of a language.</summary>
    /// <param name="language">A language that the service writes; any other is English.</param>
    public static string Of(Language language) =>
        language switch
        {
            Language.German => "de",
            Language.French => "fr",
            Language.Spanish => "es",
            _ => "en",
        };
}
