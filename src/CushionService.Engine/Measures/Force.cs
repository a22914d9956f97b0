namespace CushionService.Engine.Measures;

/// <summary>A force.</summary>
/// <param name="Newtons">At least 0.</param>
public readonly record struct Force(decimal Newtons)
{
    // The avoirdupois pound under standard gravity, 9.80665 m/s² (general conferences on weights and measures, 1901).
    private const decimal NewtonsInPound = Mass.GramsInPound / 1000 * 9.80665m;

    /// <summary>A force in pounds of force.</summary>
    /// <param name="pounds">At least 0.</param>
    public static Force FromPounds(decimal pounds) => new(pounds * NewtonsInPound);

    /// <summary>The force in pounds of force.</summary>
    public decimal Pounds => Newtons / NewtonsInPound;
}
