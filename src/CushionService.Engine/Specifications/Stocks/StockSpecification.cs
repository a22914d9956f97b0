using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Stocks;

/// <summary>A material other than fabric as a shop stocks it: its sizes, and how it is sold. A size that its kind does not have is
/// null.</summary>
public sealed record StockSpecification
{
    /// <summary>Distinct within the order; what prices and answers name it by.</summary>
    public required string Id { get; init; }

    /// <summary>A name for people; null where it has none.</summary>
    public string? Label { get; init; }

    /// <summary>What people call it: its label, or else its id.</summary>
    public string Name => Label ?? Id;

    /// <summary>What it is; not fabric.</summary>
    public required MaterialKind Kind { get; init; }

    /// <summary>Of a foam sheet, a form, a roll, a tape or webbing.</summary>
    public Length? Width { get; init; }

    /// <summary>Of a form that is a rectangle.</summary>
    public Length? Depth { get; init; }

    /// <summary>Of a foam sheet or a form that is a roll; of a zipper with closed ends, null for chain; of what is sold each, the length
    /// that one holds.</summary>
    public Length? Length { get; init; }

    /// <summary>Of foam, one layer's; of batting, its loft; of a form with sides of its own, their height.</summary>
    public Length? Thickness { get; init; }

    /// <summary>Of cord, a button or a round form.</summary>
    public Length? Diameter { get; init; }

    /// <summary>Kilograms a cubic metre, of foam, or of a loose fill as packed.</summary>
    public decimal? Density { get; init; }

    /// <summary>Of foam: the force of 25 % indentation (ASTM D3574, test B1).</summary>
    public Force? Firmness { get; init; }

    /// <summary>Of foam: the force of 65 % indentation over that of 25 %.</summary>
    public decimal? SupportFactor { get; init; }

    /// <summary>Of foam: how much larger than the cover it is cut, in width and depth; null for the workroom's.</summary>
    public Length? Oversize { get; init; }

    /// <summary>Net weight of one bag of loose fill.</summary>
    public Mass? Weight { get; init; }

    /// <summary>Square metres of surface that one unit of adhesive covers.</summary>
    public decimal? Coverage { get; init; }

    /// <summary>How it is sold; null for the usual way of its kind.</summary>
    public UnitSale? Sold { get; init; }
}
