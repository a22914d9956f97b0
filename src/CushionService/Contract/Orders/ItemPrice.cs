using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Measures;

namespace CushionService.Contract.Orders;

/// <summary>
/// The price of an item, and how it is sold. In an order, an item that is bought besides fabric; a price book names fabric too.
/// </summary>
public sealed record ItemPrice
{
    /// <summary>The item, as the answer's materials name it.</summary>
    [Required]
    [RegularExpression(Identifier.Pattern)]
    public string? Item { get; init; }

    /// <summary>A decimal number as text, at least 0, with at most 6 decimals: <c>"4.20"</c>.</summary>
    [Required]
    [RegularExpression(Orders.Amount.Pattern)]
    public string? Amount { get; init; }

    /// <summary>What the amount buys; the item is sold by this unit.</summary>
    [Required]
    public SaleUnit? Per { get; init; }

    /// <summary>
    /// The step that it is sold by, in its unit, exact: 0.25, <c>"1/3"</c>; the usual one when left out: 1/8 yd, 0.1 m, a hundredth of
    /// a weight or an area.
    /// </summary>
    [NumberRange(0.001, 1000)]
    public Quantity? Step { get; init; }

    /// <summary>The least that is sold, in its unit; one step when left out.</summary>
    [NumberRange(0, 1_000_000)]
    public Quantity? Minimum { get; init; }

    /// <summary>Prices of larger quantities, by rising quantity; none when left out.</summary>
    [NumberRange(0, 20)]
    public IReadOnlyList<PriceBreak>? Breaks { get; init; }

    /// <summary>
    /// What the shop charges for each cut, once for every line of materials: a decimal number as text; nothing when left out.
    /// </summary>
    [RegularExpression(Orders.Amount.Pattern)]
    public string? CutFee { get; init; }
}
