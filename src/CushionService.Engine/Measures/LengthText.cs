using System.Globalization;

namespace CushionService.Engine.Measures;

/// <summary>Reads and prints lengths as people write them: fractions of an inch or a yard, decimals, unit suffixes.</summary>
/// <remarks>Inch measures divide in binary fractions (NIST Handbook 44, section 5.52).</remarks>
public static class LengthText
{
    // A sixty-fourth of an inch is the finest mark of common rules.
    private const int FinestFraction = 64;
    internal const int LongestText = 40;
    // In nanometres: roots and arcs are rounded to a nanometre, and a few of them added stay well within two micrometres.
    private const long SlackOfGeometry = 2000;

    /// <summary>Comes before a length that is printed to the nearest mark.</summary>
    internal const string Rounding = "about ";

    /// <summary>Reads <c>15 1/2</c>, <c>15-1/2 in</c>, <c>38.5 cm</c>, <c>1 1/4 yd</c>, <c>1/3yd</c>, <c>12″</c>,
    /// <c>44,5 cm</c>, <c>3'8"</c>, <c>44½</c>.</summary>
    /// <param name="text">At most 40 characters.</param>
    /// <param name="unit">The unit of text without one.</param>
    /// <param name="length">The length, to the nearest nanometre.</param>
    /// <returns>False when the text is not a length, could be read in two ways (<see cref="MayBeThousands"/>), or its size is above
    /// <see cref="Length.MaxValue"/>.</returns>
    public static bool TryParse(ReadOnlySpan<char> text, LengthUnit unit, out Length length)
    {
        length = default;
        text = text.Trim();
        // The framework's parsers read on over null characters at a number's end.
        if (text.Length is 0 or > LongestText || text.Contains('\0'))
        {
            return false;
        }

        // Signs outside ASCII and commas are written as plain text first, so that one reader serves both.
        if (MeasureSigns.AreIn(text))
        {
            Span<char> plain = stackalloc char[MeasureSigns.Longest];
            int signs = MeasureSigns.Write(text, plain);
            return signs >= 0 && !MeasureSigns.AreIn(plain[..signs]) && TryParsePlain(plain[..signs].Trim(), unit, out length);
        }

        return TryParsePlain(text, unit, out length);
    }

    // Text of ASCII without a comma.
    private static bool TryParsePlain(ReadOnlySpan<char> text, LengthUnit unit, out Length length)
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

    /// <summary>Whether a text is no length because a comma in it may separate thousands: <c>1,234</c>.</summary>
    /// <param name="text">A text as it was sent.</param>
    public static bool MayBeThousands(ReadOnlySpan<char> text) => MeasureSigns.MayBeThousands(text.Trim());

    /// <summary>Prints a length with its unit as a tape shows it: as it is where it is on a mark, else "about" and the nearest mark (see
    /// <see cref="FormatNumber"/>).</summary>
    /// <param name="length">Any length, also below zero.</param>
    /// <param name="unit">The unit to print it in.</param>
    public static string Format(Length length, LengthUnit unit) =>
        $"{(IsRounded(length, unit) ? Rounding : "")}{FormatNumber(length, unit)} {Symbol(unit)}";

    /// <summary>Prints a length without its unit. Inches and yards are fractions down to 1/64 where they are exact, and yards thirds;
    /// millimetres have at most one decimal, centimetres two, metres four, where that is exact. Others are rounded: to 1/16 in or
    /// a millimetre, below 1 in or 1 cm to 1/32 in or 0.1 mm, and in yards or metres to a hundredth. A length that geometry puts within two
    /// micrometres of a mark is on it, and one that is shorter than half of the finest mark is nothing.</summary>
    /// <param name="length">Any length, also below zero.</param>
    /// <param name="unit">The unit to print it in.</param>
    public static string FormatNumber(Length length, LengthUnit unit) => Number(length, unit, finest: 16);

    /// <summary>Prints a length from an edge to a mark, with its unit: as <see cref="Format"/> does, but to the nearest 1/32 in.</summary>
    /// <param name="length">How far the mark is from the edge.</param>
    /// <param name="unit">The unit to print it in.</param>
    public static string FormatMark(Length length, LengthUnit unit) =>
        $"{(IsRounded(length, unit) ? Rounding : "")}{Number(length, unit, finest: 32)} {Symbol(unit)}";

    private static string Number(Length length, LengthUnit unit, int finest)
    {
        Length near = OnMark(length, unit),
            shown = IsRounded(near, unit) ? Rounded(near, unit, finest) : near;
        return unit is LengthUnit.Inch or LengthUnit.Yard && Binary(shown, unit) is { } fraction
            ? fraction
            : decimal.Round(shown.In(unit), 4, MidpointRounding.AwayFromZero).ToString("0.####", CultureInfo.InvariantCulture);
    }

    /// <summary>Whether a length is printed to the nearest mark, because it is on none.</summary>
    /// <param name="length">Any length.</param>
    /// <param name="unit">The unit that it is printed in.</param>
    public static bool IsRounded(Length length, LengthUnit unit) =>
        OnMark(length, unit) is var near
        && unit switch
        {
            LengthUnit.Inch => Binary(near, unit) is null,
            LengthUnit.Yard => Binary(near, unit) is null && !IsDecimal(near, unit, 3),
            LengthUnit.Metre => !IsDecimal(near, unit, 4),
            _ => near.Nanometres % (Length.NanometresIn(LengthUnit.Millimetre) / 10) != 0,
        };

    // The mark within the slack of geometry; also nothing for what is below half of the finest mark.
    private static Length OnMark(Length length, LengthUnit unit)
    {
        long mark = unit is LengthUnit.Inch or LengthUnit.Yard
            ? Length.NanometresIn(LengthUnit.Inch) / FinestFraction
            : Length.NanometresIn(LengthUnit.Millimetre) / 10;
        long off = length.Nanometres - ((long)Math.Round((decimal)length.Nanometres / mark) * mark);
        return Math.Abs(off) <= SlackOfGeometry || off == length.Nanometres ? Length.FromNanometres(length.Nanometres - off) : length;
    }

    // The nearest mark.
    private static Length Rounded(Length length, LengthUnit unit, int finest)
    {
        long size = Math.Abs(length.Nanometres),
            inch = Length.NanometresIn(LengthUnit.Inch),
            millimetre = Length.NanometresIn(LengthUnit.Millimetre);
        long mark = unit switch
        {
            LengthUnit.Inch => size < inch ? inch / 32 : inch / finest,
            LengthUnit.Yard or LengthUnit.Metre => Length.NanometresIn(unit) / 100,
            _ => size < 10 * millimetre ? millimetre / 10 : millimetre,
        };
        long marks = (size + (mark / 2)) / mark;
        return Length.FromNanometres(Math.Sign(length.Nanometres) * marks * mark);
    }

    private static bool IsDecimal(Length length, LengthUnit unit, int digits)
    {
        decimal number = length.In(unit);
        return decimal.Round(number, digits) == number;
    }

    // A whole number and a binary fraction, or thirds of a yard; null for another number.
    private static string? Binary(Length length, LengthUnit unit)
    {
        (long whole, long rest) = Math.DivRem(Math.Abs(length.Nanometres), Length.NanometresIn(unit));
        string sign = length.Nanometres < 0 ? "-" : "";
        if (rest == 0)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{sign}{whole}");
        }

        Fraction part = Fraction.Of(rest, Length.NanometresIn(unit));
        bool binary = part.Denominator <= FinestFraction && Int128.IsPow2(part.Denominator);
        return binary || (unit == LengthUnit.Yard && part.Denominator == 3)
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{sign}{(whole == 0 ? null : whole)}{(whole == 0 ? "" : " ")}{part.Numerator}/{part.Denominator}"
            )
            : null;
    }

    /// <summary>The unit's international symbol.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The unit is unknown.</exception>
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
            || (!inches.IsEmpty && !(TryParse(inches, LengthUnit.Inch, out rest) && rest >= Length.Zero && rest < Length.FromInches(12)))
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
