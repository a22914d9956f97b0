using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>A ruffle: a strip gathered into the seam.</summary>
/// <param name="At">The seams that it is in.</param>
/// <param name="Fullness">Length of the strip for each length of seam line, above 1.</param>
/// <param name="Depth">How far it reaches out, finished.</param>
/// <param name="Lining">How its outer edge is finished.</param>
public sealed record RuffleSpecification(ImmutableArray<EdgingPlace> At, Fraction Fullness, Length Depth, RuffleLining Lining)
    : EdgingSpecification(At)
{
    /// <inheritdoc />
    public override EdgingKind Kind => EdgingKind.Ruffle;
}
