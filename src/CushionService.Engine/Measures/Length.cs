namespace CushionService.Engine.Measures;

/// <summary>A length, exact to the nanometre.</summary>
/// <remarks>Held as a whole number of nanometres, so that 1/64 in and 1 mm are both exact and sums never drift.</remarks>
public readonly record struct Length : IComparable<Length>
{
    private Length(long nanometres) => Nanometres = nanometres;

    /// <summary>No length.</summary>
    public static Length Zero => default;

    /// <summary>The longest length that can be read from text: 10 km.</summary>
    public static Length MaxValue => new(10_000_000_000_000);

    /// <summary>The length as a whole number of nanometres.</summary>
    public long Nanometres { get; }

    /// <summary>A length of whole nanometres.</summary>
    public static Length FromNanometres(long nanometres) => new(nanometres);

    /// <summary>A number of units, rounded to the nearest nanometre, halves away from zero.</summary>
    /// <exception cref="OverflowException">The length is beyond what nanometres can hold.</exception>
    public static Length From(decimal number, LengthUnit unit) =>
        new((long)decimal.Round(number * NanometresIn(unit), MidpointRounding.AwayFromZero));

    /// <summary>A number of inches, rounded to the nearest nanometre.</summary>
    public static Length FromInches(decimal inches) => From(inches, LengthUnit.Inch);

    /// <summary>A number of millimetres, rounded to the nearest nanometre.</summary>
    public static Length FromMillimetres(decimal millimetres) => From(millimetres, LengthUnit.Millimetre);

    /// <summary>Nanometres in one of a unit.</summary>
    public static long NanometresIn(LengthUnit unit) =>
        unit switch
        {
            LengthUnit.Inch => 25_400_000,
            LengthUnit.Centimetre => 10_000_000,
            LengthUnit.Millimetre => 1_000_000,
            LengthUnit.Yard => 914_400_000,
            LengthUnit.Metre => 1_000_000_000,
            _ => throw new ArgumentOutOfRangeException(nameof(unit)),
        };

    /// <summary>The number of units that the length is, to 28 digits.</summary>
    public decimal In(LengthUnit unit) => (decimal)Nanometres / NanometresIn(unit);

    /// <summary>The smallest multiple of <paramref name="step"/> that is no shorter.</summary>
    /// <param name="step">Above zero.</param>
    public Length RoundUpTo(Length step)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(step.Nanometres);
        long over = Nanometres % step.Nanometres;
        return over == 0 ? this : new(Nanometres - over + (over > 0 ? step.Nanometres : 0));
    }

    /// <summary>Half the length, rounded up to a nanometre.</summary>
    public Length HalfUp() => new((Nanometres >> 1) + (Nanometres & 1));

    /// <inheritdoc />
    public int CompareTo(Length other) => Nanometres.CompareTo(other.Nanometres);

    /// <summary>The shorter of two lengths.</summary>
    public static Length Min(Length a, Length b) => a < b ? a : b;

    /// <summary>The longer of two lengths.</summary>
    public static Length Max(Length a, Length b) => a > b ? a : b;

    /// <summary>The sum.</summary>
    public static Length operator +(Length a, Length b) => new(checked(a.Nanometres + b.Nanometres));

    /// <summary>The difference.</summary>
    public static Length operator -(Length a, Length b) => new(checked(a.Nanometres - b.Nanometres));

    /// <summary>The opposite.</summary>
    public static Length operator -(Length a) => new(-a.Nanometres);

    /// <summary>A whole multiple.</summary>
    public static Length operator *(long times, Length a) => new(checked(times * a.Nanometres));

    /// <summary>Whether <paramref name="a"/> is shorter.</summary>
    public static bool operator <(Length a, Length b) => a.Nanometres < b.Nanometres;

    /// <summary>Whether <paramref name="a"/> is longer.</summary>
    public static bool operator >(Length a, Length b) => a.Nanometres > b.Nanometres;

    /// <summary>Whether <paramref name="a"/> is no longer.</summary>
    public static bool operator <=(Length a, Length b) => a.Nanometres <= b.Nanometres;

    /// <summary>Whether <paramref name="a"/> is no shorter.</summary>
    public static bool operator >=(Length a, Length b) => a.Nanometres >= b.Nanometres;

    /// <summary>The length in inches, as a fraction where it is one.</summary>
    public override string ToString() => LengthText.Format(this, LengthUnit.Inch);
}
