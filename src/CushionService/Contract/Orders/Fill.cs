using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Fillings;

namespace CushionService.Contract.Orders;

/// <summary>What fills a cushion.</summary>
public sealed record Fill
{
    /// <summary>The kind of fill.</summary>
    [Required]
    public FillKind? Kind { get; init; }

    /// <summary>
    /// The stock that it comes from, or the item that is bought, as a price names it; foam or the loose fill's own name when left out.
    /// </summary>
    [RegularExpression(Identifier.Pattern)]
    public string? Stock { get; init; }

    /// <summary>Density in kilograms a cubic metre: of the foam, or of the loose fill as packed; the stock's, or of a loose fill the
    /// trade's figure, when left out.</summary>
    [NumberRange(2, 500)]
    public double? Density { get; init; }

    /// <summary>
    /// How much larger than the cover foam is cut, in width and depth; when left out the workroom's, or nothing under a wrap, which makes
    /// the crown.
    /// </summary>
    [LengthRange("0 in", "1 in", Default = "the workroom's")]
    public Measure? Oversize { get; init; }

    /// <summary>The loose filling; polyester fibre when left out.</summary>
    public LooseFill? Material { get; init; }

    /// <summary>Share of the bag's full volume that a loose fill takes; 0.9 when left out.</summary>
    [NumberRange(0.5, 1.2, Default = "0.9")]
    public double? Plumpness { get; init; }

    /// <summary>Batting round the foam; none when left out.</summary>
    public Wrap? Wrap { get; init; }
}
