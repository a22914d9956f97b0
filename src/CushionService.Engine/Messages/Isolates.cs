namespace CushionService.Engine.Messages;

/// <summary>Keeps a name in a script from right to left from turning what is beside it.</summary>
internal static class Isolates
{
    // Hebrew, Arabic and their neighbours, and their presentation forms (Unicode, bidirectional classes R and AL).
    private static readonly (char First, char Last)[] RightToLeft = [('\u0590', '\u08ff'), ('\ufb1d', '\ufdff'), ('\ufe70', '\ufeff')];

    /// <summary>The text; between the signs of an isolate where it has letters from right to left (Unicode Standard Annex 9, section
    /// 2.4).</summary>
    public static string Of(string text)
    {
        foreach ((char first, char last) in RightToLeft)
        {
            if (text.AsSpan().ContainsAnyInRange(first, last))
            {
                return $"\u2068{text}\u2069";
            }
        }

        return text;
    }
}
