namespace CushionService.Engine.Measures;

/// <summary>An exact fraction of whole numbers, in lowest terms with a positive denominator.</summary>
public readonly record struct Fraction : IComparable<Fraction>
{
    private readonly Int128 _denominator;

    private Fraction(Int128 numerator, Int128 denominator) => (Numerator, _denominator) = (numerator, denominator);

    /// <summary>The numerator, with the sign.</summary>
    public Int128 Numerator { get; }

    /// <summary>The denominator, at least 1.</summary>
    public Int128 Denominator => _denominator == 0 ? 1 : _denominator;

    /// <summary>A fraction in lowest terms.</summary>
    /// <exception cref="DivideByZeroException">The denominator is 0.</exception>
    public static Fraction Of(Int128 numerator, Int128 denominator)
    {
        if (denominator == 0)
        {
            throw new DivideByZeroException();
        }

        if (denominator < 0)
        {
            (numerator, denominator) = (-numerator, -denominator);
        }

        Int128 divisor = GreatestCommonDivisor(Int128.Abs(numerator), denominator);
        return new Fraction(numerator / divisor, denominator / divisor);
    }

    /// <summary>The exact value of a decimal number of at most 18 digits.</summary>
    public static Fraction Of(decimal value)
    {
        Int128 scale = 1;
        while (value != decimal.Truncate(value))
        {
            value *= 10;
            scale *= 10;
        }

        return Of((Int128)value, scale);
    }

    /// <summary>The greatest common divisor of two numbers that are not negative.</summary>
    public static Int128 GreatestCommonDivisor(Int128 a, Int128 b)
    {
        while (b > long.MaxValue || a > long.MaxValue)
        {
            if (b == 0)
            {
                return a;
            }

            (a, b) = (b, a % b);
        }

        // Nearly all numbers are small, and 64 bits are divided many times faster.
        (long x, long y) = ((long)a, (long)b);
        while (y != 0)
        {
            (x, y) = (y, x % y);
        }

        return x;
    }

    /// <summary>The smallest whole number that is no less than the fraction of <paramref name="whole"/>.</summary>
    public long CeilingOf(long whole)
    {
        Int128 product = Numerator * whole;
        Int128 quotient = product / Denominator;
        return (long)(product > 0 && quotient * Denominator != product ? quotient + 1 : quotient);
    }

    /// <summary>The largest whole number that is no more than the fraction of <paramref name="whole"/>.</summary>
    public long FloorOf(long whole) => -Of(-Numerator, Denominator).CeilingOf(whole);

    /// <summary>The smallest whole number that is no less.</summary>
    public Int128 Ceiling()
    {
        Int128 quotient = Numerator / Denominator;
        return Numerator > 0 && quotient * Denominator != Numerator ? quotient + 1 : quotient;
    }

    /// <summary>The fraction turned over.</summary>
    public Fraction Inverse() => Of(Denominator, Numerator);

    /// <summary>A whole number, or the numerator over the denominator.</summary>
    public override string ToString() => Denominator == 1 ? $"{Numerator}" : $"{Numerator}/{Denominator}";

    /// <inheritdoc />
    public int CompareTo(Fraction other) => (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator);

    /// <summary>Whether one is less than the other.</summary>
    public static bool operator <(Fraction a, Fraction b) => a.CompareTo(b) < 0;

    /// <summary>Whether one is more than the other.</summary>
    public static bool operator >(Fraction a, Fraction b) => a.CompareTo(b) > 0;

    /// <summary>Whether one is no more than the other.</summary>
    public static bool operator <=(Fraction a, Fraction b) => a.CompareTo(b) <= 0;

    /// <summary>Whether one is no less than the other.</summary>
    public static bool operator >=(Fraction a, Fraction b) => a.CompareTo(b) >= 0;

    /// <summary>The exact sum.</summary>
    public static Fraction operator +(Fraction a, Fraction b) =>
        Of((a.Numerator * b.Denominator) + (b.Numerator * a.Denominator), a.Denominator * b.Denominator);

    /// <summary>The exact product.</summary>
    public static Fraction operator *(Fraction a, Fraction b) => Of(a.Numerator * b.Numerator, a.Denominator * b.Denominator);

    /// <summary>The exact quotient.</summary>
    /// <exception cref="DivideByZeroException">The divisor is 0.</exception>
    public static Fraction operator /(Fraction a, Fraction b) => a * b.Inverse();

    /// <summary>The exact value of a decimal number of at most 18 digits.</summary>
    public static implicit operator Fraction(decimal value) => Of(value);

    /// <summary>The nearest floating-point number.</summary>
    public static explicit operator double(Fraction fraction) => (double)fraction.Numerator / (double)fraction.Denominator;

    /// <summary>The nearest decimal number, to 28 digits.</summary>
    public static explicit operator decimal(Fraction fraction) => (decimal)fraction.Numerator / (decimal)fraction.Denominator;
}
