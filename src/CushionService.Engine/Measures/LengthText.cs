using System.Globalization;

namespace CushionService.Engine.Measures;

/// <summary>Reads and prints lengths as people write them: fractions of an inch or a yard, decimals, unit suffixes.</summary>
/// <remarks>Inch measures divide in binary fractions (NIST Handbook 44, section 5.52).</remarks>
public static class LengthText
{
    private const int FinestFraction = 64;
    private const int LongestText = 40;

    /// <summary>Reads <c>15 1/2</c>, <c>15-1/2 in</c>, <c>38.5 cm</c>, <c>1 1/4 yd</c>, <c>1/3yd</c>, <c>12″</c>.</summary>
    /// <param name="text">At most 40 characters.</param>
    /// <param name="unit">The unit of text without one.</param>
    /// <param name="length">The length, to the nearest nanometre.</param>
    /// <returns>False when the text is not a length, or its size is above <see cref="Length.MaxValue"/>.</returns>
    public static bool TryParse(ReadOnlySpan<char> text, LengthUnit unit, out Length length)
    {
        length = default;
        text = text.Trim();
        // The framework's parsers read on over null characters at a number's end.
        if (text.Length is 0 or > LongestText || text.Contains('\0'))
        {
            return false;
        }

        int end = text.Length;
        while (end > 0 && !char.IsAsciiDigit(text[end - 1]) && text[end - 1] != '.')
        {
            end--;
        }

        ReadOnlySpan<char> suffix = text[end..].Trim();
        if (!suffix.IsEmpty && !TryReadUnit(suffix, out unit))
        {
            return false;
        }

        if (TryReadPlain(text[..end], Length.NanometresIn(unit), out length))
        {
            return true;
        }

        return text[..end].Contains('/')
            ? TryReadFraction(text[..end], Length.NanometresIn(unit), out length)
            : TryReadNumber(text[..end], Length.NanometresIn(unit), out length);
    }

    /// <summary>Prints a length with its unit: inches and yards as fractions down to 1/64 where they are exact, else at most four
    /// decimals.</summary>
    public static string Format(Length length, LengthUnit unit) => $"{FormatNumber(length, unit)} {Symbol(unit)}";

    /// <summary>Prints a length without its unit, as <see cref="Format"/> does.</summary>
    public static string FormatNumber(Length length, LengthUnit unit)
    {
        long nanometres = Length.NanometresIn(unit);
        if (unit is LengthUnit.Inch or LengthUnit.Yard)
        {
            long size = Math.Abs(length.Nanometres);
            (long whole, long rest) = Math.DivRem(size, nanometres);
            string sign = length.Nanometres < 0 ? "-" : "";
            if (rest == 0)
            {
                return string.Create(CultureInfo.InvariantCulture, $"{sign}{whole}");
            }

            Fraction part = Fraction.Of(rest, nanometres);
            bool binary = part.Denominator <= FinestFraction && Int128.IsPow2(part.Denominator);
            if (binary || (unit == LengthUnit.Yard && part.Denominator == 3))
            {
                return string.Create(
                    CultureInfo.InvariantCulture,
                    $"{sign}{(whole == 0 ? null : whole)}{(whole == 0 ? "" : " ")}{part.Numerator}/{part.Denominator}"
                );
            }
        }

        return decimal.Round(length.In(unit), 4, MidpointRounding.AwayFromZero).ToString("0.####", CultureInfo.InvariantCulture);
    }

    /// <summary>The unit's international symbol.</summary>
    public static string Symbol(LengthUnit unit) =>
        unit switch
        {
            LengthUnit.Inch => "in",
            LengthUnit.Centimetre => "cm",
            LengthUnit.Millimetre => "mm",
            LengthUnit.Yard => "yd",
            LengthUnit.Metre => "m",
            _ => throw new ArgumentOutOfRangeException(nameof(unit)),
        };

    private static bool TryReadUnit(ReadOnlySpan<char> suffix, out LengthUnit unit)
    {
        (bool known, unit) = suffix switch
        {
            "in" or "\"" or "″" or "inch" or "inches" => (true, LengthUnit.Inch),
            "cm" => (true, LengthUnit.Centimetre),
            "mm" => (true, LengthUnit.Millimetre),
            "yd" or "yard" or "yards" => (true, LengthUnit.Yard),
            "m" => (true, LengthUnit.Metre),
            _ => (false, default),
        };
        return known;
    }

    // Up to nine characters, digits and perhaps a point: nearly all lengths are written so, and their products stay within 64 bits.
    private static bool TryReadPlain(ReadOnlySpan<char> text, long nanometres, out Length length)
    {
        length = default;
        if (text.Length is 0 or > 9 || text is ".")
        {
            return false;
        }

        long number = 0,
            parts = 0;
        foreach (char sign in text)
        {
            if (sign == '.' && parts == 0)
            {
                parts = 1;
            }
            else if (char.IsAsciiDigit(sign))
            {
                (number, parts) = ((10 * number) + (sign - '0'), 10 * parts);
            }
            else
            {
                return false;
            }
        }

        parts = Math.Max(parts, 1);
        length = Length.FromNanometres(((number * nanometres) + (parts / 2)) / parts);
        return length <= Length.MaxValue;
    }

    // 15.5 | 1.5e1, with an optional leading minus.
    private static bool TryReadNumber(ReadOnlySpan<char> text, decimal nanometres, out Length length)
    {
        length = default;
        const NumberStyles Styles = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        if (
            !decimal.TryParse(text, Styles, CultureInfo.InvariantCulture, out decimal number)
            || Math.Abs(number) > Length.MaxValue.Nanometres / nanometres
        )
        {
            return false;
        }

        length = Length.FromNanometres((long)decimal.Round(number * nanometres, MidpointRounding.AwayFromZero));
        return true;
    }

    // 1/2 | 15 1/2 | 15-1/2, with an optional leading minus.
    private static bool TryReadFraction(ReadOnlySpan<char> text, long nanometres, out Length length)
    {
        length = default;
        int slash = text.IndexOf('/');
        ReadOnlySpan<char> before = text[..slash].TrimEnd();
        int start = before.LastIndexOfAny(' ', '-') + 1;
        long whole = 0;
        if (
            (
                start > 1
                && !long.TryParse(before[..(start - 1)].TrimEnd(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out whole)
            )
            || !int.TryParse(before[start..], NumberStyles.None, CultureInfo.InvariantCulture, out int numerator)
            || !int.TryParse(text[(slash + 1)..].TrimStart(), NumberStyles.None, CultureInfo.InvariantCulture, out int denominator)
            || denominator == 0
        )
        {
            return false;
        }

        Int128 parts = ((Int128.Abs(whole) * denominator) + numerator) * nanometres;
        Int128 size = ((2 * parts) + denominator) / (2 * (Int128)denominator);
        if (size > Length.MaxValue.Nanometres)
        {
            return false;
        }

        length = Length.FromNanometres((long)(text[0] == '-' ? -size : size));
        return true;
    }
}
