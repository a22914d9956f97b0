namespace CushionService.Contract.Answers;

/// <summary>What the materials cost, without tax.</summary>
public sealed record CostAnswer
{
    /// <summary>ISO 4217 code.</summary>
    public required string Currency { get; init; }

    /// <summary>A line for each priced material, each rounded half up.</summary>
    public required IReadOnlyList<CostLineAnswer> Lines { get; init; }

    /// <summary>The sum of the lines, as a decimal number.</summary>
    public required string Total { get; init; }

    /// <summary>Always <c>excluded</c>.</summary>
    public required string Tax { get; init; }

    /// <summary>Items without a price, which the total leaves out; empty when it is complete.</summary>
    public required IReadOnlyList<string> Unpriced { get; init; }
}
