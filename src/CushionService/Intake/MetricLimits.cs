using CushionService.Engine.Measures;

namespace CushionService.Intake;

/// <summary>Limits that are said in inches, as a metric order reads them: the next round figure outward.</summary>
/// <remarks>Hundredths of a millimetre below 0.1 mm, tenths below 1 mm, whole millimetres below 50 mm, 5 mm below 200 mm, and whole
/// centimetres from there on.</remarks>
internal static class MetricLimits
{
    /// <summary>A smallest length, rounded down.</summary>
    public static Length Down(Length limit) =>
        limit < Length.Zero ? -Up(-limit) : Length.FromNanometres(limit.Nanometres - (limit.Nanometres % Step(limit)));

    /// <summary>A largest length, rounded up.</summary>
    public static Length Up(Length limit) => limit < Length.Zero ? -Down(-limit) : limit.RoundUpTo(Length.FromNanometres(Step(limit)));

    private static long Step(Length limit) =>
        limit.Nanometres switch
        {
            < 100_000 => 10_000,
            < 1_000_000 => 100_000,
            < 50_000_000 => 1_000_000,
            < 200_000_000 => 5_000_000,
            _ => 10_000_000,
        };
}
