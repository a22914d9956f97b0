using CushionService.Engine.Specifications;

namespace CushionService.Engine.Patterns;

/// <summary>A construction: what it can be combined with, and how it is drafted. One file holds one construction.</summary>
public interface IConstruction
{
    /// <summary>What it can be combined with.</summary>
    ConstructionOffer Offer { get; }

    /// <summary>Drafts the cover of a cushion that keeps to the offer.</summary>
    /// <exception cref="InvalidPatternException">The draft does not close.</exception>
    Pattern Draft(CushionSpecification cushion);
}
