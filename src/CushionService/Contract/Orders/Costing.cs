using System.ComponentModel.DataAnnotations;

namespace CushionService.Contract.Orders;

/// <summary>
/// What is charged beyond materials, and how a price is made of a cost. A field left out is the price book's, where the order names one.
/// </summary>
public sealed record Costing
{
    /// <summary>The workroom's time; not charged when left out.</summary>
    public Labour? Labour { get; init; }

    /// <summary>Share of the materials that is added for spoilt material (0.05 is 5 %); nothing when left out.</summary>
    [NumberRange(0, 1)]
    public double? Contingency { get; init; }

    /// <summary>Share of materials, contingency and labour that is added for the running of the shop; nothing when left out.</summary>
    [NumberRange(0, 10)]
    public double? Overhead { get; init; }

    /// <summary>The overhead of an hour of labour: a decimal number as text; nothing when left out.</summary>
    [RegularExpression(Amount.Pattern)]
    public string? OverheadHourly { get; init; }

    /// <summary>Gain as a share of the cost (0.5 is 50 %); not with a margin.</summary>
    [NumberRange(0, 100)]
    public double? Markup { get; init; }

    /// <summary>Gain as a share of the price; not with a markup.</summary>
    [NumberRange(0, 0.95)]
    public double? Margin { get; init; }

    /// <summary>Fees, charged after the gain; none when left out.</summary>
    [NumberRange(0, 20)]
    public IReadOnlyList<Charge>? Charges { get; init; }

    /// <summary>What is taken off; nothing when left out.</summary>
    public Discount? Discount { get; init; }

    /// <summary>The least that an order costs before tax: a decimal number as text; none when left out.</summary>
    [RegularExpression(Amount.Pattern)]
    public string? Minimum { get; init; }

    /// <summary>The tax, which is then a line of the cost and part of the total; the total is without tax when left out.</summary>
    public Tax? Tax { get; init; }

    /// <summary>How the total is rounded, before tax; to the smallest coin when left out.</summary>
    public PriceRounding? Rounding { get; init; }
}
