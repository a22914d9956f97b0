using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>A patch pocket on a side of the boxing, open above.</summary>
/// <param name="Side">The side.</param>
/// <param name="Width">Finished width.</param>
/// <param name="Height">Finished height.</param>
public sealed record PocketSpecification(Side Side, Length Width, Length Height);
