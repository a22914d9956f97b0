using System.Globalization;

namespace CushionService.Engine.Measures;

/// <summary>Reads quantities as shops write them: <c>0.25</c>, <c>1/3</c>, <c>1 1/2</c>, <c>1-1/2</c>.</summary>
public static class FractionText
{
    private const int LongestText = 40;

    // A billionth of a metre or of a yard is the finest length that there is.
    private const int MostDecimals = 9;

    // No shop divides a unit finer; larger ones would not multiply within 128 bits.
    private const int LargestPart = 10_000;
    private const int LargestWhole = 1_000_000_000;

    /// <summary>Reads a quantity that is not negative.</summary>
    /// <param name="text">At most 40 characters; a decimal number is taken to nine decimals, a fraction has a denominator of at most
    /// 10 000.</param>
    /// <param name="fraction">The exact value.</param>
    /// <returns>False when the text is no such quantity.</returns>
    public static bool TryParse(ReadOnlySpan<char> text, out Fraction fraction)
    {
        fraction = default;
        text = text.Trim();
        // The framework's parsers read on over null characters at a number's end.
        if (text.Length is 0 or > LongestText || text.Contains('\0'))
        {
            return false;
        }

        int slash = text.IndexOf('/');
        if (slash < 0)
        {
            bool read = decimal.TryParse(
                text,
                NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
                CultureInfo.InvariantCulture,
                out decimal number
            );
            fraction = read && number <= LargestWhole ? Fraction.Of(decimal.Round(number, MostDecimals)) : default;
            return read && number <= LargestWhole;
        }

        ReadOnlySpan<char> before = text[..slash].TrimEnd();
        int start = before.LastIndexOfAny(' ', '-') + 1;
        int whole = 0;
        if (
            (start > 0 && !IsNumber(before[..Math.Max(start - 1, 0)].TrimEnd(), LargestWhole, out whole))
            || !IsNumber(before[start..], LargestWhole, out int numerator)
            || !IsNumber(text[(slash + 1)..].TrimStart(), LargestPart, out int denominator)
            || denominator == 0
        )
        {
            return false;
        }

        fraction = Fraction.Of(((Int128)whole * denominator) + numerator, denominator);
        return true;
    }

    private static bool IsNumber(ReadOnlySpan<char> text, int largest, out int number) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number) && number <= largest;
}
