namespace CushionService.Contract.Answers;

/// <summary>A field of an order that a construction takes and others do not.</summary>
public sealed record ConstructionFieldAnswer
{
    /// <summary>Which of the catalogue's fields it is: <c>/cushions/*/frontThickness</c>.</summary>
    public required string Pointer { get; init; }

    /// <summary>Whether the construction must have it.</summary>
    public required bool Required { get; init; }
}
