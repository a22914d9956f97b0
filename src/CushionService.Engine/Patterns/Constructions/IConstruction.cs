using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Patterns.Constructions;

/// <summary>A construction: what it can be combined with, and how it is drafted. One file holds one construction.</summary>
public interface IConstruction
{
    /// <summary>What it can be combined with.</summary>
    ConstructionOffer Offer { get; }

    /// <summary>Drafts the cover of a cushion that keeps to the offer.</summary>
    /// <exception cref="InvalidPatternException">The draft does not close.</exception>
    /// <param name="cushion">The cushion; intake has checked it against <see cref="Offer"/>.</param>
    /// <returns>A closed pattern, without additions that do not depend on the construction.</returns>
    Pattern Draft(CushionSpecification cushion);

    /// <summary>The block of foam that fills it; nothing for a cushion without thickness.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="oversize">How much larger than the cover it is, in width and depth.</param>
    Volume Block(CushionSpecification cushion, Length oversize) => FillBlock.OfOutline(cushion, oversize);
}
