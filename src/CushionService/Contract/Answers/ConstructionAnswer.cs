using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Contract.Answers;

/// <summary>A construction, and what it combines with.</summary>
public sealed record ConstructionAnswer
{
    /// <summary>The construction.</summary>
    public required Construction Kind { get; init; }

    /// <summary>What it is, in a sentence.</summary>
    public required string Description { get; init; }

    /// <summary>The outlines that it takes.</summary>
    public required IReadOnlyList<OutlineKind> Outlines { get; init; }

    /// <summary>The closures that it takes, each with the sides it may stand on.</summary>
    public required IReadOnlyList<ClosureOption> Closures { get; init; }

    /// <summary>Whether it has a thickness.</summary>
    public required bool Thickness { get; init; }

    /// <summary>The ways its boxing may be joined; empty when it has none.</summary>
    public required IReadOnlyList<BoxingJoins> Boxing { get; init; }

    /// <summary>The handles that it takes.</summary>
    public required IReadOnlyList<HandleKind> Handles { get; init; }

    /// <summary>The edgings that it takes besides plain seams, each with the seams in which it may stand.</summary>
    public required IReadOnlyList<EdgingOption> Edgings { get; init; }

    /// <summary>What may be added to it besides.</summary>
    public required IReadOnlyList<AdditionKind> Additions { get; init; }

    /// <summary>The fields of its own.</summary>
    public required IReadOnlyList<ConstructionFieldAnswer> Fields { get; init; }
}
