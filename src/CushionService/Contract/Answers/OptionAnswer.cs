namespace CushionService.Contract.Answers;

/// <summary>One way to make an order.</summary>
public sealed record OptionAnswer
{
    /// <summary>Where the option is in the request, as a JSON Pointer; empty for the order as given.</summary>
    public required string Pointer { get; init; }

    /// <summary>The fabric that is replaced; null for the order as given.</summary>
    public string? Fabric { get; init; }

    /// <summary>The id of the fabric in its place; null for the order as given.</summary>
    public string? Option { get; init; }

    /// <summary>Whether every cushion is cut from a length of its own.</summary>
    public required bool Separate { get; init; }

    /// <summary>What the order costs so, as the total of its quote: with all that its costing charges, and its tax; null when the order
    /// names no currency, or the option cannot be made.</summary>
    public string? Total { get; init; }

    /// <summary>Items without a price, which the total leaves out.</summary>
    public required IReadOnlyList<string> Unpriced { get; init; }

    /// <summary>How much of each fabric to buy; with separate cutting, a line for each length.</summary>
    public required IReadOnlyList<YardageLine> Yardage { get; init; }

    /// <summary>What changes against the order as given, in one line.</summary>
    public required string Change { get; init; }

    /// <summary>Why the option cannot be made; empty when it can.</summary>
    public required IReadOnlyList<ViolationAnswer> Violations { get; init; }

    /// <summary>What is allowed but unwise.</summary>
    public required IReadOnlyList<ViolationAnswer> Warnings { get; init; }
}
