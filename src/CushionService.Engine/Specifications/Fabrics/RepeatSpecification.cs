using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>The repeat of a fabric's motif; one motif is on the fabric's centre line.</summary>
/// <param name="Length">Along the fabric, above zero.</param>
/// <param name="Width">Across the fabric; null when nothing is matched across.</param>
/// <param name="Drop">How the motif moves from column to column.</param>
public sealed record RepeatSpecification(Length Length, Length? Width, DropKind Drop)
{
    /// <summary>The repeat after a wash, to the nanometre below.</summary>
    /// <param name="along">Share of its length that the fabric loses.</param>
    /// <param name="across">Share of its width that the fabric loses.</param>
    public RepeatSpecification Washed(Fraction along, Fraction across) =>
        along.Numerator == 0 && across.Numerator == 0
            ? this
            : new RepeatSpecification(Kept(Length, along), Width is { } width ? Kept(width, across) : null, Drop);

    private static Length Kept(Length length, Fraction loss) =>
        loss.Numerator == 0 ? length : Length.FromNanometres(FabricSpecification.Kept(loss).FloorOf(length.Nanometres));
}
