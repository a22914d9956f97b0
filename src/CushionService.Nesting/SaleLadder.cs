namespace CushionService.Nesting;

/// <summary>The layout lengths at which the next saleable length begins: rung k reaches up to
/// floor((<see cref="First"/> + k × <see cref="Step"/>) × <see cref="Numerator"/> / <see cref="Denominator"/>).</summary>
/// <param name="First">What rung 0 (the minimum sale) reaches before scaling; may be negative, when fixed allowances eat it.</param>
/// <param name="Step">The sale step before scaling, above 0.</param>
/// <param name="Numerator">Scale, above 0 (1 − shrinkage, and the change to grid units).</param>
/// <param name="Denominator">Scale, above 0.</param>
public readonly record struct SaleLadder(long First, long Step, long Numerator, long Denominator)
{
    /// <summary>Every grid unit can be bought.</summary>
    public static SaleLadder EveryUnit { get; } = new(0, 1, 1, 1);

    /// <summary>The longest layout that rung <paramref name="rung"/> can hold, in grid units (below 0 when none can).</summary>
    public long Reach(long rung)
    {
        Int128 scaled = (First + (Int128)rung * Step) * Numerator;
        Int128 quotient = scaled / Denominator;
        return (long)(scaled < 0 && quotient * Denominator != scaled ? quotient - 1 : quotient);
    }

    /// <summary>The lowest rung, at least 0, that holds a layout of the given length in grid units.</summary>
    public long RungFor(long length)
    {
        // reach(k) >= length  <=>  (First + k Step) Numerator >= length Denominator
        Int128 missing = (Int128)length * Denominator - (Int128)First * Numerator;
        Int128 perRung = (Int128)Step * Numerator;
        return missing <= 0 ? 0 : (long)((missing + perRung - 1) / perRung);
    }
}
