using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>A French seam: sewn wrong sides together, trimmed, turned, and sewn again so that it encloses its raw edges.</summary>
/// <param name="At">The seam.</param>
/// <param name="Second">Depth of the second row; the first lies the rest of the seam allowance from the raw edges.</param>
public sealed record FrenchSeamSpecification(ImmutableArray<EdgingPlace> At, Length Second) : EdgingSpecification(At)
{
    /// <inheritdoc />
    public override EdgingKind Kind => EdgingKind.FrenchSeam;

    /// <inheritdoc />
    public override bool IsCaught => false;
}
