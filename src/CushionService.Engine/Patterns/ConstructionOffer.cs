using System.Collections.Immutable;
using CushionService.Engine.Outlines;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Patterns;

/// <summary>What a construction can be combined with.</summary>
public sealed record ConstructionOffer
{
    /// <summary>The construction.</summary>
    public required Construction Kind { get; init; }

    /// <summary>What it is, in a sentence.</summary>
    public required string Description { get; init; }

    /// <summary>The outlines that it takes.</summary>
    public required ImmutableArray<OutlineKind> Outlines { get; init; }

    /// <summary>The closures that it takes.</summary>
    public required ImmutableArray<ClosureOffer> Closures { get; init; }

    /// <summary>Whether it has a thickness.</summary>
    public required bool Thickness { get; init; }

    /// <summary>The ways its boxing may be joined; empty when it has none.</summary>
    public ImmutableArray<BoxingJoins> Joins { get; init; } = [];

    /// <summary>The handles that it takes.</summary>
    public ImmutableArray<HandleKind> Handles { get; init; } = [];

    /// <summary>The seams in which an edging may stand; empty when it takes none.</summary>
    public ImmutableArray<EdgingPlace> Edgings { get; init; } = [];

    /// <summary>The sides on which a closure may stand; empty when it is not offered.</summary>
    public ImmutableArray<Side> SidesFor(ClosureKind closure) => Closures.FirstOrDefault(offer => offer.Kind == closure)?.Sides ?? [];
}
