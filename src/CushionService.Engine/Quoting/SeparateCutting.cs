using System.Collections.Immutable;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Engine.Quoting;

/// <summary>Cuts every cushion from a length of fabric of its own, so that each can be bought and made by itself.</summary>
public static class SeparateCutting
{
    /// <summary>An order for each cushion, and one for the maker's own pieces, where there are any.</summary>
    /// <param name="order">An order.</param>
    /// <returns>In the order's order, the maker's own pieces last; each keeps all fabrics and stocks, of which it may use a
    /// part.</returns>
    /// <remarks>What is charged once is in the first of them. The least price holds for all together, which <see cref="Alternative"/>
    /// sees to.</remarks>
    public static ImmutableArray<OrderSpecification> Of(OrderSpecification order)
    {
        OrderSpecification shared = order with { Costing = order.Costing with { Minimum = null } };
        OrderSpecification further = shared with
        {
            Lines = [],
            Costing = shared.Costing with
            {
                Charges = [.. shared.Costing.Charges.Where(charge => charge.Per != ChargeBasis.Order)],
                Discount = shared.Costing.Discount is { Amount: null } share ? share : null,
            },
        };
        return
        [
            .. order.Cushions.Select((cushion, i) => (i == 0 ? shared : further) with { Cushions = [cushion], Pieces = [] }),
            .. order.Pieces.IsEmpty ? [] : new[] { (order.Cushions.IsEmpty ? shared : further) with { Cushions = [] } },
        ];
    }
}
