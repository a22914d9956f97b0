namespace CushionService.Bulk;

/// <summary>How long to wait before something that failed is tried again.</summary>
internal static class BackOff
{
    private const double FirstSeconds = 0.25;
    private const double MostSeconds = 30;

    /// <summary>Twice as long each time, up to half a minute; a part of it is random, so that workers that failed together do not try
    /// again together.</summary>
    /// <param name="failures">How often it has failed, from 1.</param>
    /// <returns>A quarter to half a second after the first failure, and half a minute at most.</returns>
    public static TimeSpan After(int failures) =>
        TimeSpan.FromSeconds(
            // The exponent is bounded so that the power stays finite however often it failed.
            Math.Min(MostSeconds, FirstSeconds * Math.Pow(2, Math.Min(failures, 16))) * (0.5 + (Random.Shared.NextDouble() / 2))
        );
}
