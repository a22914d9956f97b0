using System.Collections.Concurrent;
using System.Globalization;
using HdrHistogram;

namespace CushionService.LoadTests.Generating;

/// <summary>What a run measured: latencies in microseconds, and statuses.</summary>
internal sealed class Measured
{
    private readonly LongConcurrentHistogram _answered = new(1, 120_000_000, 3);
    private readonly ConcurrentDictionary<int, int> _statuses = new();
    private int _refusedSilently;

    /// <summary>Seconds that the run took.</summary>
    public double Seconds { get; set; }

    /// <summary>Processor time of the service a call, in microseconds.</summary>
    public double Processor { get; set; }

    /// <summary>Answers a second.</summary>
    public double Rate => Answers / Seconds;

    /// <summary>Answers.</summary>
    public long Answers => _answered.TotalCount;

    /// <summary>Calls.</summary>
    public long Calls => _statuses.Values.Sum(count => (long)count);

    /// <summary>Refusals for load without a word when to come again.</summary>
    public int RefusedSilently => _refusedSilently;

    /// <summary>Calls with statuses other than these.</summary>
    public long Others(params int[] statuses) => _statuses.Where(pair => !statuses.Contains(pair.Key)).Sum(pair => (long)pair.Value);

    /// <summary>Counts a call.</summary>
    /// <param name="reply">What came back.</param>
    /// <param name="microseconds">From when it was due, and not from when it was sent: a late generator hides nothing.</param>
    public void Add(Reply reply, long microseconds)
    {
        _statuses.AddOrUpdate(reply.Status, 1, static (_, count) => count + 1);
        if (reply.Answered)
        {
            _answered.RecordValue(Math.Clamp(microseconds, 1, 120_000_000));
        }
        else if (reply.Status is 429 or 503 && !reply.RetryAfter)
        {
            Interlocked.Increment(ref _refusedSilently);
        }
    }

    /// <summary>Latency of answers that a share of them keeps to, in milliseconds.</summary>
    public double Percentile(double percent) => Answers == 0 ? double.NaN : _answered.GetValueAtPercentile(percent) / 1_000.0;

    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Rate, 8:0} answers/s  p50 {Percentile(50):0.0} ms  p99 {Percentile(99):0.0} ms  max {Percentile(100):0} ms  "
                + $"processor {Processor:0} µs/call  "
        ) + string.Join(' ', _statuses.OrderBy(pair => pair.Key).Select(pair => $"{pair.Key}×{pair.Value}"));
}
