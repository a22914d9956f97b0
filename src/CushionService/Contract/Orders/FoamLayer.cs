using System.ComponentModel.DataAnnotations;

namespace CushionService.Contract.Orders;

/// <summary>A layer of foam in a cushion.</summary>
public sealed record FoamLayer
{
    /// <summary>The stock that it comes from, or the item that is bought, as a price names it; foam when left out.</summary>
    [RegularExpression(Identifier.Pattern)]
    public string? Stock { get; init; }

    /// <summary>How thick the layer is.</summary>
    [Required]
    [LengthRange("1/4 in", "24 in")]
    public Measure? Thickness { get; init; }

    /// <summary>Density in kilograms a cubic metre; the stock's when left out.</summary>
    [NumberRange(2, 500)]
    public double? Density { get; init; }

    /// <summary>How much larger than the cover it is cut, in width and depth; the stock's, or the workroom's, when left out.</summary>
    [LengthRange("0 in", "1 in", Default = "the workroom's")]
    public Measure? Oversize { get; init; }
}
