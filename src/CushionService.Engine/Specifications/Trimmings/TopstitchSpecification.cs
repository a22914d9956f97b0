using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>Topstitching beside a seam.</summary>
/// <param name="At">The seams that it follows.</param>
/// <param name="Distance">From the seam to the first row, and from each row to the next; above zero.</param>
/// <param name="Rows">How many rows, at least 1.</param>
public sealed record TopstitchSpecification(ImmutableArray<EdgingPlace> At, Length Distance, int Rows) : EdgingSpecification(At)
{
    /// <inheritdoc />
    public override EdgingKind Kind => EdgingKind.Topstitched;

    /// <inheritdoc />
    public override bool IsCaught => false;
}
