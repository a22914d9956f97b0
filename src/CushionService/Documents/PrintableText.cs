using System.Text;

namespace CushionService.Documents;

/// <summary>Text of callers made fit for a document.</summary>
internal static class PrintableText
{
    private const char Replacement = '\uFFFD';

    /// <summary>The text with every character that XML 1.0 forbids, or that controls the terminal or the direction of the text around
    /// it, replaced by U+FFFD; line breaks and tabs become spaces. Isolates round names from right to left stay, in pairs: they keep the
    /// text around them as it is.</summary>
    public static string Of(string text)
    {
        int first = 0;
        while (first < text.Length && text[first] is >= ' ' and <= '~')
        {
            first++;
        }

        if (first == text.Length)
        {
            return text;
        }

        var clean = new StringBuilder(text.Length).Append(text, 0, first);
        foreach (Rune rune in text.AsSpan(first).EnumerateRunes())
        {
            clean.Append(
                rune.Value is '\t' or '\n' or '\r' ? " "
                : IsPrintable(rune.Value) ? rune.ToString()
                : Replacement.ToString()
            );
        }

        return Isolation.Paired(clean.ToString());
    }

    // Lone surrogates have become U+FFFD in the enumeration of runes.
    private static bool IsPrintable(int code) =>
        code >= 0x20
        && code is not ((>= 0x7F and <= 0x9F) or (>= 0x202A and <= 0x202E) or 0x2066 or 0x2067 or 0x2028 or 0x2029)
        && (code & 0xFFFE) != 0xFFFE
        && code is not (>= 0xFDD0 and <= 0xFDEF);
}
