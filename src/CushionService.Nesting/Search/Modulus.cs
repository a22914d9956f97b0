using System.Diagnostics;

namespace CushionService.Nesting.Search;

/// <summary>A divisor whose remainders are asked for again and again. A product with its reciprocal takes a third of what a division of 64
/// bits takes.</summary>
internal readonly struct Modulus
{
    // Below it, whole numbers and their quotients are within one of exact in doubles.
    private const long Exact = 1L << 50;

    private readonly double _reciprocal;

    /// <summary>Prepares the divisor.</summary>
    /// <param name="value">At least 1.</param>
    public Modulus(long value)
    {
        Debug.Assert(value >= 1, "Remainders are of a positive divisor.");
        (Value, _reciprocal) = (value, 1.0 / value);
    }

    /// <summary>The divisor.</summary>
    public long Value { get; }

    /// <summary>The remainder from 0 up to less than the divisor, of negative numbers too.</summary>
    /// <param name="number">Any.</param>
    public long Of(long number)
    {
        if (Value == 1)
        {
            return 0;
        }

        long rest = number is > -Exact and < Exact ? number - (long)(number * _reciprocal) * Value : number % Value;
        // The quotient was cut off towards zero, and may be one off either way.
        return rest < 0 ? rest + Value
            : rest >= Value ? rest - Value
            : rest;
    }
}
