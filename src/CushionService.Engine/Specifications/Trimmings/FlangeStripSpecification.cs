using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>A flange set into a seam: a flat strip, folded lengthwise, its corners mitred.</summary>
/// <param name="At">The seams in which it lies.</param>
/// <param name="Depth">How far it extends, finished.</param>
public sealed record FlangeStripSpecification(ImmutableArray<EdgingPlace> At, Length Depth) : EdgingSpecification(At)
{
    /// <inheritdoc />
    public override EdgingKind Kind => EdgingKind.Flange;
}
