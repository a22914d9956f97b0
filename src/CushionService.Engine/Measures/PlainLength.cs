using System.Globalization;

namespace CushionService.Engine.Measures;

/// <summary>Reads lengths of plain text: a number, a fraction or both, feet and inches, and a unit.</summary>
internal static class PlainLength
{
    /// <summary>Reads a length.</summary>
    /// <param name="text">ASCII without a comma, trimmed.</param>
    /// <param name="unit">The unit of text without one.</param>
    /// <param name="length">The length, to the nearest nanometre.</param>
    /// <returns>False when the text is not a length, or its size is above <see cref="Length.MaxValue"/>.</returns>
    public static bool TryRead(ReadOnlySpan<char> text, LengthUnit unit, out Length length)
    {
        length = default;
        int feet = text.IndexOf('\'');
        if (feet > 0)
        {
            return TryReadFeet(text[..feet].TrimEnd(), text[(feet + 1)..].Trim(), out length);
        }

        // The number ends with the last digit or point; what follows is the unit.
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

    // 3'8", 3' 8 1/2", 3'8 and 3': whole feet, and less than twelve inches.
    private static bool TryReadFeet(ReadOnlySpan<char> feet, ReadOnlySpan<char> inches, out Length length)
    {
        length = default;
        Length rest = Length.Zero;
        inches = inches.TrimStart("- ");
        // 1'000 separates thousands; 3'8 cm is neither.
        int digits = inches.IndexOfAnyExceptInRange('0', '9');
        bool isOther = digits > 2 || (digits < 0 && inches.Length > 2) || inches.EndsWith("m");
        if (
            isOther
            || !int.TryParse(feet, NumberStyles.None, CultureInfo.InvariantCulture, out int whole)
            || (
                !inches.IsEmpty
                && !(LengthText.TryParse(inches, LengthUnit.Inch, out rest) && rest >= Length.Zero && rest < Length.FromInches(12))
            )
            || whole > Length.MaxValue.Nanometres / (12 * Length.NanometresIn(LengthUnit.Inch))
        )
        {
            return false;
        }

        length = Length.FromNanometres(whole * 12 * Length.NanometresIn(LengthUnit.Inch)) + rest;
        return length <= Length.MaxValue;
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
