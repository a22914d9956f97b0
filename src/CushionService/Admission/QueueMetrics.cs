using System.Diagnostics;
using System.Diagnostics.Metrics;
using CushionService.Metrics;

namespace CushionService.Admission;

/// <summary>Measures of the queue. A queue that grows, or waits that grow, say that there are too few
/// workers.</summary>
internal static class QueueMetrics
{
    // Most waits are below a millisecond; the upper boundaries show when calls are about to be rejected.
    private static readonly Histogram<double> Wait = ServiceMeter.Meter.CreateHistogram(
        "cushionservice.queue.wait",
        "s",
        "How long an order waited for a worker.",
        null,
        new InstrumentAdvice<double> { HistogramBucketBoundaries = [0.0001, 0.001, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 1, 5] }
    );

    /// <summary>Records that an order has waited.</summary>
    /// <param name="ticks">How long, in ticks of <see cref="Stopwatch"/>.</param>
    public static void Waited(long ticks) => Wait.Record((double)ticks / Stopwatch.Frequency);

    /// <summary>Reports how many calls wait, whenever the metrics are read.</summary>
    /// <param name="turns">Read whenever the metrics are; a gauge that is watched twice would report twice.</param>
    public static void Watch(Turns turns) =>
        ServiceMeter.Meter.CreateObservableGauge(
            "cushionservice.queue.length",
            () => turns.Waiting,
            "{order}",
            "Orders that wait for a worker."
        );
}
