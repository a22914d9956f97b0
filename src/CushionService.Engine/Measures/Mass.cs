namespace CushionService.Engine.Measures;

/// <summary>A mass.</summary>
/// <param name="Grams">At least 0.</param>
public readonly record struct Mass(decimal Grams)
{
    /// <summary>Grams in the avoirdupois pound, exactly (international yard and pound agreement, 1959).</summary>
    public const decimal GramsInPound = 453.59237m;

    /// <summary>The mass in kilograms.</summary>
    public decimal Kilograms => Grams / 1000;

    /// <summary>The mass in avoirdupois pounds.</summary>
    public decimal Pounds => Grams / GramsInPound;

    /// <summary>A whole multiple.</summary>
    public static Mass operator *(long times, Mass a) => new(times * a.Grams);

    /// <summary>The sum.</summary>
    public static Mass operator +(Mass a, Mass b) => new(a.Grams + b.Grams);
}
