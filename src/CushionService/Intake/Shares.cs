using CushionService.Engine.Measures;

namespace CushionService.Intake;

/// <summary>Numbers that say how much of something: shrinkage, take-up, fullness.</summary>
/// <remarks>A share is of 1: 0.05 is 5 %. From here on it is an exact fraction.</remarks>
internal static class Shares
{
    // Finer than a millionth is noise, and would outgrow exact arithmetic.
    private const int Decimals = 6;

    /// <summary>A number that has passed its range, to the nearest millionth; null where it is left out.</summary>
    public static Fraction? Of(double? share) => share is { } number ? Fraction.Of(decimal.Round((decimal)number, Decimals)) : null;
}
