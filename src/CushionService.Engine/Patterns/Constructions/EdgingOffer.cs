using System.Collections.Immutable;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Constructions;

/// <summary>An edging, and the seams in which it may stand.</summary>
/// <param name="Kind">The edging.</param>
/// <param name="Places">The seams, at least one.</param>
public sealed record EdgingOffer(EdgingKind Kind, ImmutableArray<EdgingPlace> Places)
{
    /// <summary>The seams that are taken when none is named; all of them unless told otherwise.</summary>
    public ImmutableArray<EdgingPlace> Usual { get; init; } = Places;
}
