using System.ComponentModel.DataAnnotations;

namespace CushionService.Bulk;

/// <summary>The configuration section <c>Worker</c>: where orders come from, and how they are taken.</summary>
internal sealed class WorkerOptions
{
    /// <summary>The section's name.</summary>
    public const string Section = "Worker";

    /// <summary>The addresses of the NATS servers, separated by commas. <c>tls://</c> asks for TLS.</summary>
    [Required]
    public string Url { get; init; } = "nats://127.0.0.1:4222";

    /// <summary>A file with the credentials that the server knows; null for none.</summary>
    public string? Credentials { get; init; }

    /// <summary>Orders worked on at the same time; as many as there are processors when left out.</summary>
    [Range(1, 1024)]
    public int Orders { get; init; } = Environment.ProcessorCount;

    /// <summary>Orders taken at once by each of them. More saves round trips, and makes the others wait when a large order is among
    /// them.</summary>
    [Range(1, 256)]
    public int Batch { get; init; } = 8;

    /// <summary>Seconds after which the server gives an order to another worker, unless this one says that it still has it. So long
    /// wait the orders of a worker that was killed.</summary>
    [Range(2, 3_600)]
    public int AckWaitSeconds { get; init; } = 30;

    /// <summary>Times that an order is tried. One that has failed as often, or that its workers have died of, is a dead letter.</summary>
    [Range(1, 100)]
    public int Deliveries { get; init; } = 5;

    /// <summary>Minutes for which the server knows the ids of answers, so that none is stored twice. Longer than any order waits for
    /// another worker.</summary>
    [Range(1, 1_440)]
    public int DuplicateMinutes { get; init; } = 10;

    /// <summary>Whether the worker makes the streams and the consumer that are not there. An operator who makes them turns it
    /// off.</summary>
    public bool CreateStreams { get; init; } = true;

    /// <summary>How long an order may stay unacknowledged.</summary>
    public TimeSpan AckWait => TimeSpan.FromSeconds(AckWaitSeconds);
}
