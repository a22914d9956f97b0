using System.Diagnostics;
using System.Diagnostics.Metrics;
using CushionService.Metrics;

namespace CushionService.Admission;

/// <summary>Measures of how long orders wait.</summary>
internal static class QueueMetrics
{
    private static readonly Histogram<double> Wait = ServiceMeter.Meter.CreateHistogram(
        "cushionservice.queue.wait",
        "s",
        "How long an order waited for a worker.",
        null,
        new InstrumentAdvice<double> { HistogramBucketBoundaries = [0.0001, 0.001, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 1, 5] }
    );

    /// <summary>Counts an order that waited, in ticks of the stopwatch.</summary>
    public static void Waited(long ticks)
    {
        if (Wait.Enabled)
        {
            Wait.Record((double)ticks / Stopwatch.Frequency);
        }
    }

    /// <summary>Tells how many wait.</summary>
    public static void Watch(WorkerPool pool) =>
        ServiceMeter.Meter.CreateObservableGauge(
            "cushionservice.queue.length",
            () => pool.Waiting,
            "{order}",
            "Orders that wait for a worker."
        );
}
