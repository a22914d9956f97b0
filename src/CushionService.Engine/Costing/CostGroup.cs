using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Costing;

/// <summary>What the cushions of one group cost.</summary>
/// <param name="Group">The group; null for what has none.</param>
/// <param name="Quantity">How many cushions it has.</param>
/// <param name="Amount">The sum of their shares.</param>
public sealed record CostGroup(string? Group, int Quantity, Money Amount)
{
    /// <summary>The groups of an order, by their first cushions; nothing where no cushion has one.</summary>
    /// <param name="order">The order.</param>
    /// <param name="shares">What each of its cushions costs.</param>
    public static ImmutableArray<CostGroup> Of(OrderSpecification order, ImmutableArray<CostShare> shares) =>
        order.Cushions.All(cushion => cushion.Group is null)
            ? []
            :
            [
                .. shares
                    .GroupBy(share => order.Cushions.FirstOrDefault(cushion => cushion.Id == share.Cushion)?.Group)
                    .Select(group => new CostGroup(
                        group.Key,
                        group.Where(share => share.Cushion is not null).Sum(share => share.Quantity),
                        group.Select(share => share.Amount).Aggregate((sum, amount) => sum + amount)
                    )),
            ];
}
