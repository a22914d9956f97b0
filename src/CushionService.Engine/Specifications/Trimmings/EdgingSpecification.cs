using System.Collections.Immutable;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>The edging in the seams round the faces.</summary>
/// <param name="At">The seams, at least one, each once.</param>
public abstract record EdgingSpecification(ImmutableArray<EdgingPlace> At)
{
    /// <summary>What it is.</summary>
    public abstract EdgingKind Kind { get; }

    /// <summary>Whether it is basted to a face and caught in its seam.</summary>
    public virtual bool IsCaught => true;
}
