using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>Flat piping: a strip folded in half lengthwise, without a cord, whose fold shows beyond the seam.</summary>
/// <param name="At">The seams that it is in.</param>
/// <param name="Depth">How far the fold shows, above zero.</param>
/// <param name="Cut">How its strips lie on the fabric.</param>
public sealed record FlatPipingSpecification(ImmutableArray<EdgingPlace> At, Length Depth, WeltCut Cut) : SeamStripSpecification(At, Cut)
{
    /// <inheritdoc />
    public override EdgingKind Kind => EdgingKind.FlatPiping;

    /// <inheritdoc />
    public override Length Size => Depth;

    /// <inheritdoc />
    /// <remarks>w = 2d + 2s: both layers and both allowances (follows from the fold).</remarks>
    public override Length Width(Length seam) => 2 * Depth + 2 * seam;
}
