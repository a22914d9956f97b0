namespace CushionService.Contract.Answers;

/// <summary>The share that one line of cushions has of the total.</summary>
public sealed record CostShareAnswer
{
    /// <summary>The cushion; null for the maker's own pieces, which share one.</summary>
    public string? Cushion { get; init; }

    /// <summary>How many cushions are made the same, or pieces cut.</summary>
    public required int Quantity { get; init; }

    /// <summary>How much for all of them, as a decimal number in whole coins.</summary>
    public required string Amount { get; init; }
}
