using System.ComponentModel.DataAnnotations;

namespace CushionService.Admission;

/// <summary>The configuration section <c>Admission</c>: how much work is taken on at the same time, and for how
/// long.</summary>
internal sealed class AdmissionOptions
{
    /// <summary>The section's name.</summary>
    public const string Section = "Admission";

    /// <summary>Orders worked on at the same time; as many as there are processors when left out. More workers than
    /// processors make every order slower and none faster.</summary>
    [Range(1, 1024)]
    public int Workers { get; init; } = Environment.ProcessorCount;

    /// <summary>Calls are rejected while those that wait would keep a new one waiting for longer than this, in
    /// milliseconds, judged by the mean time of recent orders. A public service sets it to some tens of milliseconds,
    /// so that what is accepted is answered as fast as ever.</summary>
    [Range(1, 60_000)]
    public int LongestWaitMs { get; init; } = 10_000;

    /// <summary>Calls that may wait, whatever they take. Each may have an order of a mebibyte in memory.</summary>
    [Range(1, 100_000)]
    public int Queue { get; init; } = 1_024;

    /// <summary>An order that has no answer after this many seconds is cancelled. The time in the queue counts, except
    /// in a stream.</summary>
    [Range(1, 3_600)]
    public int DeadlineSeconds { get; init; } = 30;

    /// <summary>The same for an order with the effort overnight, whose search takes up to a minute on two
    /// cores.</summary>
    [Range(1, 3_600)]
    public int OvernightDeadlineSeconds { get; init; } = 180;

    /// <summary>Seconds after which a rejected caller may try again, at least. Written into <c>Retry-After</c>, and
    /// into <c>RetryInfo</c> over gRPC.</summary>
    [Range(1, 3_600)]
    public int RetryAfterSeconds { get; init; } = 1;

    /// <summary>Up to this many seconds are added at random, so that callers that were rejected together do not try
    /// again together.</summary>
    [Range(0, 3_600)]
    public int RetryJitterSeconds { get; init; } = 3;
}
