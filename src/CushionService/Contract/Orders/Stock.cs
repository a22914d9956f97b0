using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Contract.Orders;

/// <summary>A material other than fabric as a shop stocks it. Each kind has only the sizes that mean something for it.</summary>
public sealed record Stock
{
    /// <summary>Names the stock, for fills and prices; distinct within the order.</summary>
    [Required]
    [RegularExpression(Identifier.Pattern)]
    public string? Id { get; init; }

    /// <summary>A name for people; at most 200 characters; a blank one counts as none.</summary>
    [MaxLength(200)]
    public string? Label
    {
        get;
        init => field = string.IsNullOrWhiteSpace(value) ? null : value;
    }

    /// <summary>What it is; fabrics are in fabrics instead.</summary>
    [Required]
    public MaterialKind? Kind { get; init; }

    /// <summary>
    /// Width of a foam sheet, of a form, of a roll of batting or anti-slip material, of tape or webbing. Foam without one is cut to size by
    /// the shop.
    /// </summary>
    [LengthRange("1/4 in", "240 in")]
    public Measure? Width { get; init; }

    /// <summary>Depth of a form that is a rectangle.</summary>
    [LengthRange("2 in", "120 in")]
    public Measure? Depth { get; init; }

    /// <summary>Length of a foam sheet, of a form for a bolster, or of a zipper with closed ends: a zipper without one is chain. Of other
    /// goods that are sold each, the length that one spool or roll holds.</summary>
    [LengthRange("1 in", "200000 in")]
    public Measure? Length { get; init; }

    /// <summary>Thickness of one layer of foam, or of a form with sides of its own; loft of batting.</summary>
    [LengthRange("1/8 in", "24 in")]
    public Measure? Thickness { get; init; }

    /// <summary>Diameter of cord, of a button or of a round form.</summary>
    [LengthRange("1/32 in", "120 in")]
    public Measure? Diameter { get; init; }

    /// <summary>Density in kilograms a cubic metre: of foam, or of a loose fill as packed.</summary>
    [NumberRange(2, 500)]
    public double? Density { get; init; }

    /// <summary>Firmness of foam: its indentation force deflection, in newtons at 25 % (ASTM D3574, test B1).</summary>
    [NumberRange(10, 1000)]
    public double? Firmness { get; init; }

    /// <summary>Support factor of foam: its indentation force at 65 % over that at 25 %.</summary>
    [NumberRange(1, 5)]
    public double? SupportFactor { get; init; }

    /// <summary>How much larger than the cover this foam is cut, in width and depth: 0 for foam that is cut exact, such as quick-dry
    /// foam for outdoors; the workroom's when left out.</summary>
    [LengthRange("0 in", "1 in", Default = "the workroom's")]
    public Measure? Oversize { get; init; }

    /// <summary>Net weight in kilograms of one bag of loose fill that is sold each.</summary>
    [NumberRange(0.01, 500)]
    public double? Weight { get; init; }

    /// <summary>Square metres of surface that one unit of adhesive covers; both faces of a joint are coated.</summary>
    [NumberRange(0.01, 1000)]
    public double? Coverage { get; init; }

    /// <summary>How it is sold; the usual way of its kind when left out.</summary>
    public StockSale? Sold { get; init; }
}
