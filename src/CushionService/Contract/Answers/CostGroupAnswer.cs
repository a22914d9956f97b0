namespace CushionService.Contract.Answers;

/// <summary>What the cushions of one group cost.</summary>
public sealed record CostGroupAnswer
{
    /// <summary>The group; null for what has none.</summary>
    public string? Group { get; init; }

    /// <summary>How many cushions it has.</summary>
    public required int Quantity { get; init; }

    /// <summary>How much for all of them, as a decimal number in whole coins.</summary>
    public required string Amount { get; init; }
}
