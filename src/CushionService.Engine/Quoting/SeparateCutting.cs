using System.Collections.Immutable;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Quoting;

/// <summary>Cuts every cushion from a length of fabric of its own, so that each can be bought and made by itself.</summary>
public static class SeparateCutting
{
    /// <summary>An order for each cushion, and one for the maker's own pieces, where there are any.</summary>
    /// <param name="order">An order.</param>
    /// <returns>In the order's order, the maker's own pieces last; each keeps all fabrics and stocks, of which it may use a
    /// part.</returns>
    public static ImmutableArray<OrderSpecification> Of(OrderSpecification order) =>
        [
            .. order.Cushions.Select(cushion => order with { Cushions = [cushion], Pieces = [] }),
            .. order.Pieces.IsEmpty ? [] : new[] { order with { Cushions = [] } },
        ];
}
