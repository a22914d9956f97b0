using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Measures;

namespace CushionService.Contract.Orders;

/// <summary>How a stock is sold.</summary>
public sealed record StockSale
{
    /// <summary>The unit of sale.</summary>
    [Required]
    public SaleUnit? Unit { get; init; }

    /// <summary>
    /// What is sold comes in whole steps of this, in the unit of sale, exact: 0.25, <c>"1/3"</c>; 1/8 yd, 0.1 m, 0.01 of a weight or an
    /// area, or one when left out.
    /// </summary>
    [NumberRange(0.001, 10000)]
    public Quantity? Step { get; init; }

    /// <summary>The least that is sold, in the unit of sale; one step when left out.</summary>
    [NumberRange(0, 10000)]
    public Quantity? Minimum { get; init; }
}
