using CushionService.Engine.Messages;

namespace CushionService.Documents.Sheets;

/// <summary>Languages as documents name them (BCP 47).</summary>
internal static class Codes
{
    /// <summary>The code of a language.</summary>
    public static string Of(Language language) =>
        language switch
        {
            Language.German => "de",
            Language.French => "fr",
            Language.Spanish => "es",
            _ => "en",
        };
}
