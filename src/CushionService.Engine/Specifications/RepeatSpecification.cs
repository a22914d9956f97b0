using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications;

/// <summary>The repeat of a cloth's motif; one motif stands on the cloth's centre line.</summary>
/// <param name="Length">Along the cloth, above zero.</param>
/// <param name="Width">Across the cloth; null when nothing is matched across.</param>
/// <param name="Drop">How the motif moves from column to column.</param>
public sealed record RepeatSpecification(Length Length, Length? Width, DropKind Drop);
