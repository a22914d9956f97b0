using System.Diagnostics.Metrics;
using CushionService.Metrics;
using CushionService.PriceBooks;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace CushionService.Operations;

/// <summary>Says which price books are not what lies in their folder: those of which an older version is in use, and those
/// that were never readable.</summary>
/// <param name="books">The price books, read again whenever their folder changes.</param>
internal sealed class PriceBookHealth(PriceBookStore books) : IHealthCheck
{
    /// <summary>Degraded while any file is refused: quotes go on by the prices before.</summary>
    public Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        string[] refused = [.. books.Errors.Select(error => $"{error.File}, line {error.Line}").Distinct().Take(10)];
        return Task.FromResult(
            refused.Length == 0
                ? HealthCheckResult.Healthy($"{books.Count} price books.")
                : HealthCheckResult.Degraded(
                    $"Refused: {string.Join("; ", refused)}. Of {books.Old.Count()} the version before is in use; the log has the reasons."
                )
        );
    }

    /// <summary>Reports the books by their state, whenever the metrics are read.</summary>
    public static void Watch(PriceBookStore books) =>
        ServiceMeter.Meter.CreateObservableGauge(
            "cushionservice.price_books",
            () =>
            {
                int old = books.Old.Count(),
                    refused = books.Errors.Select(error => error.File).Distinct().Count() - old;
                return new[] { Of(books.Count - old, "current"), Of(old, "old"), Of(refused, "refused") };
            },
            "{book}",
            "Price books, by whether the version in use is that of the file (current), one before it (old), or none (refused)."
        );

    private static Measurement<int> Of(int count, string state) => new(count, new KeyValuePair<string, object?>("state", state));
}
