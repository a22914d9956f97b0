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
    /// The stock that it comes from, or the item that is bought, as a price names it. When left out: foam, the loose fill's own name, or
    /// of forms the stock that fits the cover by the trade's rule.
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

    /// <summary>Share of the bag's full volume that a loose fill takes; as the fullness says when left out.</summary>
    [NumberRange(0.8, 1.2, Default = "0.9")]
    public double? Plumpness { get; init; }

    /// <summary>
    /// How full a cushion with a loose fill or a form is; medium when left out. Of a loose fill soft is 0.8, medium 0.9 and plump all of
    /// what a bag that does not stretch holds. A form is the smallest that fills the cover, for a plump cushion the largest.
    /// </summary>
    public Fullness? Fullness { get; init; }

    /// <summary>Kilograms of a loose fill in one cushion, at least what fills it softly; as its volume and its density give when left
    /// out.</summary>
    [NumberRange(0.01, 100)]
    public double? Weight { get; init; }

    /// <summary>Width of a form, or diameter of a round one; when left out as its stock, or by the trade's rule: 1 to 2 in, or 2 to 5 cm,
    /// larger than the cover.</summary>
    [LengthRange("2 in", "120 in")]
    public Measure? Width { get; init; }

    /// <summary>Depth of a form; its width when left out.</summary>
    [LengthRange("2 in", "120 in")]
    public Measure? Depth { get; init; }

    /// <summary>Thickness of a form with sides of its own; the cushion's when left out.</summary>
    [LengthRange("1/4 in", "24 in")]
    public Measure? Thickness { get; init; }

    /// <summary>Layers of foam from top to bottom, together as thick as the cushion and glued to each other; one block when left out.
    /// Each has its own stock, density and oversize.</summary>
    [NumberRange(1, 8)]
    public IReadOnlyList<FoamLayer>? Layers { get; init; }

    /// <summary>How much higher than its edge foam is in the middle: a smaller slab under the uppermost layer, or on the block; flat when
    /// left out.</summary>
    [LengthRange("1/4 in", "3 in")]
    public Measure? Crown { get; init; }

    /// <summary>Batting round the foam; none when left out.</summary>
    public Wrap? Wrap { get; init; }
}
