using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Contract.Answers;

/// <summary>An edging, and the seams in which it may stand.</summary>
public sealed record EdgingOption
{
    /// <summary>The edging.</summary>
    public required EdgingKind Kind { get; init; }

    /// <summary>The seams.</summary>
    public required IReadOnlyList<EdgingPlace> Places { get; init; }

    /// <summary>The seams that are taken when an order names none.</summary>
    public required IReadOnlyList<EdgingPlace> Usual { get; init; }
}
