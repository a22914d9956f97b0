namespace CushionService.Nesting.Search;

/// <summary>Common divisors of whole numbers.</summary>
internal static class Divisors
{
    /// <summary>The greatest common divisor (Euclid); the other number where one is 0.</summary>
    /// <param name="one">At least 0.</param>
    /// <param name="other">At least 0; both 0 give 0.</param>
    public static long Greatest(long one, long other)
    {
        while (other != 0)
        {
            (one, other) = (other, one % other);
        }

        return one;
    }
}
