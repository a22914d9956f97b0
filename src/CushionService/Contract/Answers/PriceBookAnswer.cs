namespace CushionService.Contract.Answers;

/// <summary>The price book that a cost was taken from.</summary>
public sealed record PriceBookAnswer
{
    /// <summary>Its name, as orders name it.</summary>
    public required string Name { get; init; }

    /// <summary>The shop's own word for this version of it; null when the book has none.</summary>
    public string? Version { get; init; }
}
