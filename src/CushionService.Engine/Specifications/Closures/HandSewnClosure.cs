using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Closures;

/// <summary>A gap in a seam, closed by hand.</summary>
/// <param name="Side">Where it is.</param>
public sealed record HandSewnClosure(Side Side) : ClosureSpecification(Side)
{
    /// <inheritdoc />
    public override ClosureKind Kind => ClosureKind.HandSewn;
}
