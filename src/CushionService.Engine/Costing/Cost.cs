using System.Collections.Immutable;
using CushionService.Engine.Layouts;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Costing;

/// <summary>What an order costs; without tax, unless its costing has a rate.</summary>
/// <param name="Lines">A line for each material with a price.</param>
/// <param name="Labour">A line for each operation with a time.</param>
/// <param name="Additions">What is charged on top.</param>
/// <param name="Total">The sum of lines, labour and additions.</param>
/// <param name="Shares">The share that each line of cushions has of the total, to the smallest coin.</param>
/// <param name="Unpriced">Items without a price, and operations without a time, which the total leaves out.</param>
public sealed record Cost(
    ImmutableArray<CostLine> Lines,
    ImmutableArray<LabourLine> Labour,
    ImmutableArray<CostAddition> Additions,
    Money Total,
    ImmutableArray<CostShare> Shares,
    ImmutableArray<string> Unpriced
)
{
    /// <summary>What each group of cushions costs; empty where no cushion has a group.</summary>
    public ImmutableArray<CostGroup> Groups { get; init; } = [];

    /// <summary>The tax in the total, which may come to nothing; null where the costing has no rate.</summary>
    public Money? Tax { get; init; }

    /// <summary>The total before tax.</summary>
    public Money BeforeTax => Tax is { } tax ? Total - tax : Total;

    /// <summary>What has a price for each, though each has a size of its own, so that the price says nothing; the total leaves it
    /// out.</summary>
    public ImmutableArray<Material> Unsized { get; init; } = [];

    /// <summary>Prices materials and labour, adds what is charged on top, and allots the whole to the cushions.</summary>
    /// <param name="order">The order, with its prices and costing.</param>
    /// <param name="yardages">The layout of each fabric.</param>
    /// <param name="materials">What is bought.</param>
    /// <param name="currency">The currency of every price.</param>
    public static Cost Of(OrderSpecification order, IReadOnlyList<Yardage> yardages, ImmutableArray<Material> materials, Currency currency)
    {
        MaterialPricing priced = MaterialPricing.Of(order, materials);
        LabourPricing labour = LabourPricing.Of(order, yardages);
        Money bought = Sum(priced.Lines.Select(line => line.Amount)),
            worked = Sum(labour.Lines.Select(line => line.Amount));
        Money fabric = Sum(priced.Lines.Where(line => line.Material.Kind == MaterialKind.Fabric).Select(line => line.Amount));
        ImmutableArray<CostAddition> additions = CostAdditions.Of(
            order,
            new CostSums(
                bought,
                fabric,
                worked,
                labour.Minutes,
                order.Cushions.Sum(cushion => cushion.Quantity),
                yardages.Count(yardage => !yardage.Layout.Fabric.CustomerOwned)
            )
        );
        ImmutableArray<CostShare> shares = CostSharing.Of(order, yardages, priced.Lines, labour.Lines, additions, currency);
        return new Cost(
            priced.Lines,
            labour.Lines,
            additions,
            bought + worked + Sum(additions.Select(addition => addition.Amount)),
            shares,
            [.. priced.Unpriced, .. labour.Unpriced]
        )
        {
            Tax = order.Costing.Tax is null
                ? null
                : Sum(additions.Where(one => one.Kind == CostAdditionKind.Tax).Select(one => one.Amount)),
            Unsized = priced.Unsized,
            Groups = CostGroup.Of(order, shares),
        };

        Money Sum(IEnumerable<Money> amounts) => amounts.Aggregate(new Money(0, currency), (sum, amount) => sum + amount);
    }
}
