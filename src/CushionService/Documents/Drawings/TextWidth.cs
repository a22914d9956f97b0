using System.Globalization;

namespace CushionService.Documents.Drawings;

/// <summary>How wide a line of sans-serif text can come out, whichever of the named typefaces the reader has.</summary>
/// <remarks>Advance widths by class of character, each at least that of the widest of the usual sans-serif faces (a DejaVu-like face
/// is the widest of them), so that text which fits by this estimate fits in print.</remarks>
internal static class TextWidth
{
    private const double BoldGain = 1.12;

    /// <summary>Width of the text in ems.</summary>
    /// <param name="text">One line.</param>
    /// <param name="bold">Whether it is bold, which is about an eighth wider.</param>
    public static double Of(string text, bool bold = false)
    {
        double sum = 0;
        foreach (char letter in text)
        {
            sum += Of(letter);
        }

        return bold ? sum * BoldGain : sum;
    }

    /// <summary>The text, cut short with an ellipsis where it is wider than <paramref name="ems"/>; empty when not even that
    /// fits.</summary>
    /// <param name="text">One line.</param>
    /// <param name="ems">The room, in heights of the type.</param>
    /// <param name="bold">Whether it is bold.</param>
    public static string Shorten(string text, double ems, bool bold = false)
    {
        if (Of(text, bold) <= ems)
        {
            return text;
        }

        // Between what a reader takes for letters, so that no accent is cut off its letter and no surrogate pair is
        // halved.
        int[] starts = StringInfo.ParseCombiningCharacters(text);
        for (int kept = starts.Length - 1; kept > 0; kept--)
        {
            int depth = 0;
            string shorter = Isolation.Line(text[..starts[kept]].TrimEnd() + "…", ref depth);
            if (Of(shorter, bold) <= ems)
            {
                return shorter;
            }
        }

        return "";
    }

    private static double Of(char letter) =>
        letter switch
        {
            'i' or 'j' or 'l' or 'I' or 'J' or '|' or '\'' or '.' or ',' or ':' or ';' or '!' or ' ' or '\u00A0' => 0.4,
            'f' or 'r' or 't' or '/' or '-' or '(' or ')' or '[' or ']' => 0.46,
            'm' or 'w' or 'M' or 'W' or '@' or '%' => 1,
            (>= 'a' and <= 'z') or (>= '0' and <= '9') or '_' => 0.64,
            (>= 'A' and <= 'Z') => 0.79,
            (> ' ' and <= '~') or '×' => 0.86,
            Isolation.Start or Isolation.End => 0,
            _ => char.IsSurrogate(letter) ? 0.75 : 1.05,
        };
}
