using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Fillings;

/// <summary>What fills a cushion.</summary>
/// <param name="Kind">Foam, loose fill or a form.</param>
/// <param name="Item">The item that is bought.</param>
/// <param name="Density">Kilograms a cubic metre; null when not known (foam only).</param>
/// <param name="Oversize">How much larger than the cover foam is cut, in width and depth.</param>
/// <param name="Plumpness">Share of the bag's full volume that a loose fill takes.</param>
public sealed record FillSpecification(FillKind Kind, string Item, decimal? Density, Length Oversize, decimal Plumpness)
{
    /// <summary>Layers of foam from top to bottom, together as thick as the cushion; empty where it is one block.</summary>
    public ImmutableArray<FoamLayerSpecification> Layers { get; init; } = [];

    /// <summary>How much higher than its edge the foam is in the middle: a smaller layer of that thickness; zero for flat foam.</summary>
    public Length Crown { get; init; }

    /// <summary>Batting round the foam; null for none.</summary>
    public WrapSpecification? Wrap { get; init; }

    /// <summary>How full it is, where it is no foam.</summary>
    public Fullness Fullness { get; init; } = Fullness.Medium;

    /// <summary>What one cushion holds of a loose fill; null where that follows from its volume.</summary>
    public Mass? Weight { get; init; }

    /// <summary>The form; null for another kind.</summary>
    public FormSpecification? Form { get; init; }
}
