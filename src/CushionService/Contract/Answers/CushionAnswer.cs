using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Contract.Answers;

/// <summary>A cushion as it will be when it is done.</summary>
public sealed record CushionAnswer
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>A name for people; null where it has none.</summary>
    public string? Label { get; init; }

    /// <summary>What it belongs to, such as a room; null for nothing.</summary>
    public string? Group { get; init; }

    /// <summary>How many are made the same.</summary>
    public required int Quantity { get; init; }

    /// <summary>What it measures when it is done.</summary>
    public required FinishedSizeAnswer Finished { get; init; }

    /// <summary>Which way its fabric runs: every visible piece of it runs so.</summary>
    public required Grain Grain { get; init; }

    /// <summary>Length of the boxing on the seam line, in the order's units; null for a cushion without.</summary>
    public double? Loop { get; init; }

    /// <summary>What fills it; null for nothing.</summary>
    public CushionFillAnswer? Fill { get; init; }
}
