using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Pricing;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Nesting;

namespace CushionService.Engine.Specifications;

/// <summary>An order that keeps every rule: what the engine works from.</summary>
public sealed record OrderSpecification
{
    /// <summary>The unit in which derivations are written.</summary>
    public required LengthUnit Unit { get; init; }

    /// <summary>The currency of all prices; null when nothing is priced.</summary>
    public Currency? Currency { get; init; }

    /// <summary>How hard to search for a short layout.</summary>
    public Effort Effort { get; init; } = Effort.Standard;

    /// <summary>The cushions, by distinct ids.</summary>
    public ImmutableArray<CushionSpecification> Cushions { get; init; } = [];

    /// <summary>Cushions that lie beside each other; no cushion is in two rows.</summary>
    public ImmutableArray<RowSpecification> Rows { get; init; } = [];

    /// <summary>The maker's own pieces, by distinct ids.</summary>
    public ImmutableArray<LoosePieceSpecification> Pieces { get; init; } = [];

    /// <summary>The fabrics, by distinct ids.</summary>
    public required ImmutableArray<FabricSpecification> Fabrics { get; init; }

    /// <summary>How the workroom sews and cuts.</summary>
    public required WorkroomPractice Workroom { get; init; }

    /// <summary>What a shop stocks besides fabric, by distinct ids; of a kind, the first that suits is taken.</summary>
    public ImmutableArray<StockSpecification> Stocks { get; init; } = [];

    /// <summary>Prices of items other than fabric, by item.</summary>
    public ImmutableDictionary<string, ItemPriceSpecification> Prices { get; init; } =
        ImmutableDictionary<string, ItemPriceSpecification>.Empty;

    /// <summary>The price book that it names; null for none. What it gives is already in the prices, the fabrics and the costing.</summary>
    public PriceBookSpecification? PriceBook { get; init; }

    /// <summary>What else is sold with it.</summary>
    public ImmutableArray<FreeLineSpecification> Lines { get; init; } = [];

    /// <summary>What is charged beyond materials.</summary>
    public CostingSpecification Costing { get; init; } = CostingSpecification.None;

    /// <summary>A fabric of the order.</summary>
    /// <param name="id">Its id.</param>
    /// <exception cref="ArgumentException">The order has no such fabric.</exception>
    public FabricSpecification Fabric(string? id)
    {
        foreach (FabricSpecification fabric in Fabrics)
        {
            if (fabric.Id == id)
            {
                return fabric;
            }
        }

        throw new ArgumentException($"The order has no fabric {id}.", nameof(id));
    }
}
