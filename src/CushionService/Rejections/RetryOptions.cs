using System.ComponentModel.DataAnnotations;

namespace CushionService.Rejections;

/// <summary>When rejected callers may try again: two settings of the section <c>Admission</c>.</summary>
internal sealed class RetryOptions
{
    /// <summary>Seconds after which a rejected caller may try again, at least. Written into <c>Retry-After</c>, and
    /// into <c>RetryInfo</c> over gRPC.</summary>
    [Range(1, 3_600)]
    public int RetryAfterSeconds { get; init; } = 1;

    /// <summary>Up to this many seconds are added at random, so that callers that were rejected together do not try
    /// again together.</summary>
    [Range(0, 3_600)]
    public int RetryJitterSeconds { get; init; } = 3;
}
