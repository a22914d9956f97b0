using System.ComponentModel.DataAnnotations;
using CushionService.Nesting;

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

    /// <summary>How long a call with the effort quick may wait for a worker, in milliseconds; after that it is rejected.
    /// A call that would wait longer than any effort may, judged by the mean time of recent orders, is rejected at
    /// once.</summary>
    [Range(1, 60_000)]
    public int LongestWaitMs { get; init; } = 5_000;

    /// <summary>The same for the effort standard; 2.5 times that of quick when left out.</summary>
    [Range(1, 600_000)]
    public int? StandardLongestWaitMs { get; init; }

    /// <summary>The same for the efforts beyond standard; 5 times that of quick when left out.</summary>
    [Range(1, 600_000)]
    public int? ThoroughLongestWaitMs { get; init; }

    /// <summary>The part of the workers that one caller with a key or a token may have at the same time, rounded up to
    /// whole workers: 0 to 1.</summary>
    [Range(0.0, 1.0)]
    public double CallerShare { get; init; } = 0.75;

    /// <summary>The same for one address without a key, once a key or an authority is configured; rounded down, and at
    /// least one worker.</summary>
    [Range(0.0, 1.0)]
    public double GuestShare { get; init; } = 0.25;

    /// <summary>The same for all addresses without a key together.</summary>
    [Range(0.0, 1.0)]
    public double AnonymousShare { get; init; } = 0.5;

    /// <summary>The same for all streams together, and for the streams of one caller.</summary>
    [Range(0.0, 1.0)]
    public double StreamShare { get; init; } = 0.5;

    /// <summary>Where Redis is, in which instances share the rates of callers: <c>redis:6379</c>, or more of what StackExchange.Redis
    /// reads. When left out, each instance has limits of its own.</summary>
    public string? Redis { get; init; }

    /// <summary>Requests a second that one address may keep up for what needs no scope: pages, the document,
    /// reflection.</summary>
    [Range(1, 1_000_000)]
    public int PageRate { get; init; } = 50;

    /// <summary>Such requests at once after a pause.</summary>
    [Range(1, 1_000_000)]
    public int PageBurst { get; init; } = 400;

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

    /// <summary>The longest wait of any effort.</summary>
    public TimeSpan LongestWaitOfAny =>
        new[] { LongestWaitOf(Effort.Quick), LongestWaitOf(Effort.Standard), LongestWaitOf(Effort.Thorough) }.Max();

    /// <summary>How long a call of an effort may wait for a worker.</summary>
    /// <param name="effort">Of the order.</param>
    public TimeSpan LongestWaitOf(Effort effort) =>
        TimeSpan.FromMilliseconds(
            effort switch
            {
                Effort.Quick => LongestWaitMs,
                Effort.Standard => StandardLongestWaitMs ?? 2.5 * LongestWaitMs,
                _ => ThoroughLongestWaitMs ?? 5.0 * LongestWaitMs,
            }
        );

    /// <summary>How long an order of an effort may take.</summary>
    /// <param name="effort">Of the order.</param>
    /// <returns>From the arrival of a call, or from the turn of an order in a stream.</returns>
    public TimeSpan DeadlineOf(Effort effort) =>
        TimeSpan.FromSeconds(effort == Effort.Overnight ? OvernightDeadlineSeconds : DeadlineSeconds);
}
