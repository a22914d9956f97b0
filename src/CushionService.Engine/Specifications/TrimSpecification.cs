namespace CushionService.Engine.Specifications;

/// <summary>What is added to a cover whatever its construction.</summary>
public sealed record TrimSpecification
{
    /// <summary>Nothing.</summary>
    public static TrimSpecification None { get; } = new();

    /// <summary>What stands in the seams; null for plain seams.</summary>
    public EdgingSpecification? Edging { get; init; }
}
