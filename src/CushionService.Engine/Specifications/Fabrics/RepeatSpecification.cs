using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>The repeat of a fabric's motif. At least one of its lengths is given.</summary>
/// <param name="Length">Along the fabric; null for stripes up the bolt, of which nothing is matched along.</param>
/// <param name="Width">Across the fabric; null for bands across, of which nothing is matched across.</param>
/// <param name="Drop">How the motif moves from column to column; straight unless both lengths are given.</param>
public sealed record RepeatSpecification(Length? Length, Length? Width, DropKind Drop)
{
    /// <summary>From the left edge of the usable width to the centre of a motif, at least zero; null where it is unknown or nothing repeats
    /// across.</summary>
    public Length? MotifX { get; init; }

    /// <summary>From the cut, once squared, to the centre of that motif, at least zero; null where it is unknown or nothing repeats
    /// along.</summary>
    public Length? MotifY { get; init; }

    /// <summary>How far the motif is along the fabric from one column to the next; zero for a straight repeat.</summary>
    public Length DropLength => this is { Drop: DropKind.Half, Width: not null, Length: { } length } ? length.HalfUp() : default;

    /// <summary>Whether it must be looked for across the fabric.</summary>
    public bool IsUnknownAcross => Width is not null && MotifX is null;

    /// <summary>Whether it must be looked for along the fabric.</summary>
    public bool IsUnknownAlong => Length is not null && MotifY is null;

    /// <summary>The repeat after a wash, to the nanometre below.</summary>
    /// <param name="along">Share of its length that the fabric loses.</param>
    /// <param name="across">Share of its width that the fabric loses.</param>
    public RepeatSpecification Washed(Fraction along, Fraction across) =>
        along.Numerator == 0 && across.Numerator == 0
            ? this
            : new RepeatSpecification(Kept(Length, along), Kept(Width, across), Drop)
            {
                MotifX = Kept(MotifX, across),
                MotifY = Kept(MotifY, along),
            };

    private static Length? Kept(Length? length, Fraction loss) =>
        length is { } whole && loss.Numerator > 0
            ? Measures.Length.FromNanometres(FabricSpecification.Kept(loss).FloorOf(whole.Nanometres))
            : length;
}
