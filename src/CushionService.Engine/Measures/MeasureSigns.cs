using System.Buffers;
using System.Text;

namespace CushionService.Engine.Measures;

/// <summary>Rewrites what people type in a length into the signs that <see cref="LengthText"/> reads: full-width digits, no-break spaces,
/// fractions of one sign, a decimal comma.</summary>
internal static class MeasureSigns
{
    /// <summary>How many signs a text may have that is rewritten; a fraction of one sign becomes four.</summary>
    public const int Longest = 160;

    // Signs that are not read as they are.
    private static readonly SearchValues<char> Others = SearchValues.Create(",\u00a0\u2009\u202f\u3000");

    /// <summary>Whether a text has signs to rewrite.</summary>
    public static bool AreIn(ReadOnlySpan<char> text) => text.ContainsAny(Others) || !Ascii.IsValid(text);

    /// <summary>Writes the text with plain signs.</summary>
    /// <param name="text">At most 40 characters.</param>
    /// <param name="plain">Takes it; of <see cref="Longest"/> characters.</param>
    /// <returns>The number of characters; -1 where a comma could separate thousands, or there are several.</returns>
    public static int Write(ReadOnlySpan<char> text, Span<char> plain)
    {
        int length = 0;
        foreach (char sign in text)
        {
            char wide = sign is >= '\uff01' and <= '\uff5e' ? (char)(sign - '\uff01' + '!') : sign;
            if (Fraction(wide) is { } fraction)
            {
                if (length > 0 && char.IsAsciiDigit(plain[length - 1]))
                {
                    plain[length++] = ' ';
                }

                fraction.CopyTo(plain[length..]);
                length += fraction.Length;
                // What follows is no part of its denominator.
                plain[length++] = ' ';
            }
            else
            {
                plain[length++] = wide switch
                {
                    '\u00a0' or '\u2009' or '\u202f' or '\u3000' => ' ',
                    '\u2044' or '\u2215' => '/',
                    '\u2019' or '\u2032' => '\'',
                    '\u201d' or '\u2033' => '"',
                    '\u2212' => '-',
                    _ => wide,
                };
            }
        }

        int comma = plain[..length].IndexOf(',');
        if (comma >= 0)
        {
            if (IsAmbiguous(plain[..length], comma))
            {
                return -1;
            }

            plain[comma] = '.';
        }

        return length;
    }

    /// <summary>Whether a number in a text can be read in two ways, because a comma in it may separate thousands.</summary>
    public static bool MayBeThousands(ReadOnlySpan<char> text)
    {
        Span<char> plain = stackalloc char[Longest];
        return text.Length <= LengthText.LongestText && text.ContainsAny(',', '\uff0c') && Write(text, plain) < 0;
    }

    // 1,234 and 1,234.5, but neither 0,125 nor 44,5.
    private static bool IsAmbiguous(ReadOnlySpan<char> text, int comma)
    {
        ReadOnlySpan<char> before = text[..comma].TrimStart(" -"),
            after = text[(comma + 1)..];
        int digits = after.IndexOfAnyExceptInRange('0', '9');
        digits = digits < 0 ? after.Length : digits;
        return after.ContainsAny(',', '.') || before.Contains('.') || (digits == 3 && before.Length is > 0 and <= 3 && before is not "0");
    }

    private static string? Fraction(char sign) =>
        sign switch
        {
            '½' => "1/2",
            '¼' => "1/4",
            '¾' => "3/4",
            '⅛' => "1/8",
            '⅜' => "3/8",
            '⅝' => "5/8",
            '⅞' => "7/8",
            '⅓' => "1/3",
            '⅔' => "2/3",
            _ => null,
        };
}
