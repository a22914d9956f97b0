using System.Globalization;
using System.Text;

namespace CushionService.Documents.Sheets;

/// <summary>Text of callers as a string of a style sheet.</summary>
internal static class CssText
{
    /// <summary>The text in quotes, every character but ASCII letters and digits escaped by its code (CSS Syntax Level 3, 4.3.7).</summary>
    /// <param name="text">Anything; letters that cannot be printed are left out.</param>
    /// <remarks>Escapes have six digits, so that no letter after one is taken for a part of it.</remarks>
    public static string Quoted(string text)
    {
        var css = new StringBuilder("\"");
        foreach (Rune rune in PrintableText.Of(text).EnumerateRunes())
        {
            if (rune.IsAscii && char.IsAsciiLetterOrDigit((char)rune.Value))
            {
                css.Append((char)rune.Value);
            }
            else
            {
                css.Append(CultureInfo.InvariantCulture, $"\\{rune.Value:X6}");
            }
        }

        return css.Append('"').ToString();
    }
}
