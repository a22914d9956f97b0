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
            return signs >= 0 && !MeasureSigns.AreIn(plain[..signs]) && PlainLength.TryRead(plain[..signs].Trim(), unit, out length);
        }

        return PlainLength.TryRead(text, unit, out length);
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
}
