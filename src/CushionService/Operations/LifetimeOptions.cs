using System.ComponentModel.DataAnnotations;

namespace CushionService.Operations;

/// <summary>The configuration section <c>Lifetime</c>: how the service begins and ends, and how many connections it has
/// meanwhile.</summary>
internal sealed class LifetimeOptions
{
    /// <summary>The section's name.</summary>
    public const string Section = "Lifetime";

    /// <summary>How long the service goes on answering after SIGTERM, in seconds; to be set longer than a balancer takes to see an
    /// instance as not ready. A person at a terminal does not wait.</summary>
    [Range(0.0, 3_600)]
    public double NoticeSeconds { get; init; }

    /// <summary>After this long, in seconds, calls that are still being answered are cut off.</summary>
    [Range(0.0, 3_600)]
    public double ShutdownSeconds { get; init; } = 30;

    /// <summary>How long a connection of gRPC lives, in seconds; as long as its client wants when it is zero.</summary>
    [Range(0.0, 86_400)]
    public double GrpcConnectionAgeSeconds { get; init; }

    /// <summary>Connections open at the same time, for each address that the service listens on; when left out, what the limit of
    /// descriptors leaves.</summary>
    [Range(1, 1_000_000)]
    public int? Connections { get; init; }

    /// <summary>How many of them one address may have that is no known proxy; a quarter when left out.</summary>
    [Range(1, 1_000_000)]
    public int? ConnectionsOfAddress { get; init; }
}
