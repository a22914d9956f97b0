using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>The repeat of a fabric's motif; one motif stands on the fabric's centre line.</summary>
/// <param name="Length">Along the fabric, above zero.</param>
/// <param name="Width">Across the fabric; null when nothing is matched across.</param>
/// <param name="Drop">How the motif moves from column to column.</param>
public sealed record RepeatSpecification(Length Length, Length? Width, DropKind Drop);
