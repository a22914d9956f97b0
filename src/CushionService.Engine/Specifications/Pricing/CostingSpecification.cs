using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Pricing;

/// <summary>What is charged beyond materials, and how a price is made of a cost.</summary>
public sealed record CostingSpecification
{
    /// <summary>Nothing beyond materials; the price is the cost.</summary>
    public static CostingSpecification None { get; } = new();

    /// <summary>The workroom's time; null when it is not charged.</summary>
    public LabourSpecification? Labour { get; init; }

    /// <summary>Share of the materials' cost that is added for spoilt material, at least 0 (common practice, no source: 5 to 10
    /// %).</summary>
    public decimal Contingency { get; init; }

    /// <summary>Share of materials, contingency and labour that is added for the running of the shop, at least 0.</summary>
    public decimal Overhead { get; init; }

    /// <summary>The overhead of an hour of labour; null for nothing.</summary>
    public Money? OverheadHourly { get; init; }

    /// <summary>Gain as a share of the cost, at least 0; 0 where a margin is set.</summary>
    public decimal Markup { get; init; }

    /// <summary>Gain as a share of the price, from 0 up to but not including 1; 0 where a markup is set.</summary>
    public decimal Margin { get; init; }

    /// <summary>Fees, each charged after the gain.</summary>
    public ImmutableArray<ChargeSpecification> Charges { get; init; } = [];

    /// <summary>What is taken off; null for nothing.</summary>
    public DiscountSpecification? Discount { get; init; }

    /// <summary>The least that an order costs before tax; null for none.</summary>
    public Money? Minimum { get; init; }

    /// <summary>The tax; null where the price is without it.</summary>
    public TaxSpecification? Tax { get; init; }

    /// <summary>How the price is rounded; null for the smallest coin.</summary>
    public RoundingSpecification? Rounding { get; init; }
}
