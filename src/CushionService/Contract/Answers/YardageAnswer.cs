namespace CushionService.Contract.Answers;

/// <summary>The answer to a call for yardage.</summary>
public sealed record YardageAnswer
{
    /// <summary>The order's reference.</summary>
    public string? Reference { get; init; }

    /// <summary>The unit of every length.</summary>
    public required Units Units { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string Engine { get; init; }

    /// <summary>How much of each fabric to buy.</summary>
    public required IReadOnlyList<YardageLine> Yardage { get; init; }

    /// <summary>What is allowed but unwise.</summary>
    public required IReadOnlyList<ViolationAnswer> Warnings { get; init; }
}
