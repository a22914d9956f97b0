namespace CushionService.Contract.Answers;

/// <summary>What can be ordered: enough to draw a form from.</summary>
public sealed record CatalogueAnswer
{
    /// <summary>Version of the engine that answered.</summary>
    public required string Engine { get; init; }

    /// <summary>The constructions, each with what it combines with.</summary>
    public required IReadOnlyList<ConstructionAnswer> Constructions { get; init; }

    /// <summary>The outlines, each with the sizes that describe it.</summary>
    public required IReadOnlyList<OutlineAnswer> Outlines { get; init; }

    /// <summary>Every field of an order, its kind, range and default.</summary>
    public required IReadOnlyList<FieldAnswer> Fields { get; init; }
}
