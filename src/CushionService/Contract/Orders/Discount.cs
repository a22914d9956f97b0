using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Contract.Orders;

/// <summary>What is taken off: a percentage or an amount.</summary>
public sealed record Discount
{
    /// <summary>So many percent (10 is 10 %); not with an amount.</summary>
    [NumberRange(0, 100)]
    public double? Percent { get; init; }

    /// <summary>So much: a decimal number as text; no more is taken off than there is; not with a percentage.</summary>
    [RegularExpression(Orders.Amount.Pattern)]
    public string? Amount { get; init; }

    /// <summary>What it is taken from; from the whole price when left out.</summary>
    public DiscountBase? On { get; init; }
}
