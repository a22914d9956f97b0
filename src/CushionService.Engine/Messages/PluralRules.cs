namespace CushionService.Engine.Messages;

/// <summary>Which form of a word follows a whole number.</summary>
/// <remarks>Unicode CLDR, supplemental data, plural rules for cardinals: English, German, Spanish 1; French 0 and 1; French and Spanish
/// whole millions.</remarks>
public static class PluralRules
{
    private const long Million = 1_000_000;

    /// <summary>The category of a count; its sign does not matter.</summary>
    public static PluralCategory Of(Language language, long count) =>
        language switch
        {
            Language.French when count is 0 => PluralCategory.One,
            _ when count is 1 or -1 => PluralCategory.One,
            Language.French or Language.Spanish when count != 0 && count % Million == 0 => PluralCategory.Many,
            _ => PluralCategory.Other,
        };
}
