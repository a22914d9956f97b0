using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Closures;

/// <summary>How a cover opens.</summary>
/// <param name="Side">Where it is.</param>
public abstract record ClosureSpecification(Side Side)
{
    /// <summary>The kind of closure.</summary>
    public abstract ClosureKind Kind { get; }
}
