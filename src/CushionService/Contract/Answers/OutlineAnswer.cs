using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Contract.Answers;

/// <summary>An outline, and the sizes that describe it.</summary>
public sealed record OutlineAnswer
{
    /// <summary>The outline.</summary>
    public required OutlineKind Kind { get; init; }

    /// <summary>The fields of an order that it takes.</summary>
    public required IReadOnlyList<OutlineFieldAnswer> Fields { get; init; }
}
