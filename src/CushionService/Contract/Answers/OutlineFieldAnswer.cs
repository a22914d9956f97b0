namespace CushionService.Contract.Answers;

/// <summary>A field of an order that an outline takes and others may not.</summary>
public sealed record OutlineFieldAnswer
{
    /// <summary>Which of the catalogue's fields it is: <c>/cushions/*/outline/width</c>.</summary>
    public required string Pointer { get; init; }

    /// <summary>Whether the outline must have it.</summary>
    public required bool Required { get; init; }
}
