namespace CushionService.Engine.Patterns.Constructions;

/// <summary>A field of its own that a construction takes.</summary>
/// <param name="Field">The field.</param>
/// <param name="Required">Whether it must be given.</param>
public sealed record FieldOffer(ConstructionField Field, bool Required = false);
