using CushionService.Engine.Measures;

namespace CushionService.Engine.Costing;

/// <summary>The share that one line of cushions has of an order's total.</summary>
/// <param name="Cushion">The cushion's id; null for the maker's own pieces, which share one.</param>
/// <param name="Quantity">How many cushions are made the same; how many pieces are cut.</param>
/// <param name="Amount">How much, for all of them. The shares of an order sum to its total.</param>
public sealed record CostShare(string? Cushion, int Quantity, Money Amount);
