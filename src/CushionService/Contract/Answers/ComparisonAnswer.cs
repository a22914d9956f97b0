namespace CushionService.Contract.Answers;

/// <summary>An order made in several ways.</summary>
public sealed record ComparisonAnswer
{
    /// <summary>The order's reference.</summary>
    public string? Reference { get; init; }

    /// <summary>The unit of every length.</summary>
    public required Units Units { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string Engine { get; init; }

    /// <summary>ISO 4217 code of the totals; null when the order names no currency.</summary>
    public string? Currency { get; init; }

    /// <summary>The order as it was given.</summary>
    public required OptionAnswer Given { get; init; }

    /// <summary>The options: cheapest first by their totals, then those whose fabric has no price by the length sold, then those that
    /// cannot be made. Equals keep the order of the request.</summary>
    public required IReadOnlyList<OptionAnswer> Options { get; init; }
}
