using System.Text.Json.Serialization;
using CushionService.Contract.Answers;

namespace CushionService.Rejections;

/// <summary>Why a call has no answer (RFC 9457).</summary>
public sealed record Problem
{
    /// <summary>The media type of a problem.</summary>
    internal const string MediaType = "application/problem+json";

    /// <summary>Names the kind of problem; it ends in the same word as the code.</summary>
    public required string Type { get; init; }

    /// <summary>A sentence for people; for an order, how many problems it has.</summary>
    public required string Title { get; init; }

    /// <summary>The HTTP status.</summary>
    public required int Status { get; init; }

    /// <summary>A stable word for programs.</summary>
    public required string Code { get; init; }

    /// <summary>Every fault of the order; empty when the fault is not the order's.</summary>
    public required IReadOnlyList<ViolationAnswer> Violations { get; init; }

    /// <summary>In a stream, the line of the order, from 1; left out elsewhere.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public long? Line { get; init; }

    /// <summary>Names the call in the service's logs.</summary>
    public required string TraceId { get; init; }
}
