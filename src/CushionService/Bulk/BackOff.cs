namespace CushionService.Bulk;

/// <summary>How long to wait before something that failed is tried again.</summary>
internal static class BackOff
{
    private const double FirstSeconds = 0.25;
    private const double MostSeconds = 30;

    /// <summary>Twice as long each time, up to half a minute; a part of it is random, so that workers that failed together do not try
    /// again together.</summary>
    /// <param name="failures">How often it has failed, from 1.</param>
    public static TimeSpan After(int failures) =>
        TimeSpan.FromSeconds(
            Math.Min(MostSeconds, FirstSeconds * Math.Pow(2, Math.Min(failures, 16))) * (0.5 + (Random.Shared.NextDouble() / 2))
        );
}
