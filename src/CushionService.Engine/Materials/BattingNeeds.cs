using System.Collections.Immutable;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>Batting: round foam, and as wadding behind channels.</summary>
/// <param name="order">The order.</param>
/// <param name="shop">How batting is sold: from a roll of known width by length, else by area.</param>
/// <param name="search">How hard each layout is searched.</param>
internal sealed class BattingNeeds(OrderSpecification order, Shop shop, SideSearch search)
{
    /// <summary>The item that batting is priced as where no stock is known.</summary>
    public const string Batting = "batting";

    /// <summary>What one cushion line takes.</summary>
    /// <param name="cushion">A cushion line; amounts are for all its copies.</param>
    /// <returns>None, one or two needs: the wrap of the foam, and the wadding behind channels. Their amounts are areas in
    /// square millimetres; <see cref="Lay"/> puts a length in their place where the batting comes off a roll.</returns>
    public IEnumerable<Need> Of(CushionSpecification cushion) =>
        PiecesOf(cushion)
            .Select(use => new Need(
                cushion,
                GoodsOf(use.Item),
                Wrapping.Area(use.Pieces),
                use.Sides is not { } sides ? MaterialTexts.Wadding(Text(use.Pieces[0]))
                    : cushion.Construction == Construction.Bolster
                        ? MaterialTexts.WrapRoll(use.Pieces.Select(Text), sides == WrapSides.WholeSkin)
                    : MaterialTexts.Wrap(
                        use.Pieces.Select(Text),
                        sides,
                        sides == WrapSides.WholeSkin && cushion.Construction == Construction.Wedge
                    )
            ));

    /// <summary>Lays what comes off rolls.</summary>
    /// <param name="basket">Where the length off each roll goes: it replaces the sum of the areas.</param>
    public void Lay(Basket basket)
    {
        foreach (IGrouping<string, Use> used in order.Cushions.SelectMany(PiecesOf).GroupBy(use => use.Item))
        {
            if (shop.Named(used.Key, MaterialKind.Batting) is { } roll)
            {
                RollNesting.Lay(basket, GoodsOf(used.Key), roll, used.SelectMany(use => use.Pieces), search);
            }
        }
    }

    /// <summary>The batting that a cushion takes, by its item: that of its wrap, which goes behind channels as well, else the
    /// first that is stocked.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="shop">What is stocked.</param>
    /// <returns>Nothing for a cushion without a wrap and without channels.</returns>
    public static IEnumerable<string> ItemsOf(CushionSpecification cushion, Shop shop) =>
        cushion.Fill?.Wrap is { } wrap ? [wrap.Item]
        : cushion.Channels is not null ? [shop.Stocked(MaterialKind.Batting)?.Id ?? Batting]
        : [];

    // The wrap of the foam, and wadding behind channels; both of the same batting where the order names one.
    private IEnumerable<Use> PiecesOf(CushionSpecification cushion)
    {
        if (cushion.Fill?.Wrap is { } wrap)
        {
            yield return new Use(
                wrap.Item,
                [.. Wrapping.Pieces(cushion, wrap).Select(piece => piece with { Count = piece.Count * wrap.Layers * cushion.Quantity })],
                wrap.Sides
            );
        }

        // Wadding as large as the top before it is stitched (common practice, no source).
        if (cushion.Channels is { } channels)
        {
            yield return new Use(
                ItemsOf(cushion, shop).First(),
                [
                    (
                        (cushion.Width + channels.Across(cushion.Width) + 2 * cushion.SeamAllowance).RoundUpTo(order.Workroom.CuttingStep),
                        (cushion.Depth + channels.Along(cushion.Depth) + 2 * cushion.SeamAllowance).RoundUpTo(order.Workroom.CuttingStep),
                        cushion.Quantity
                    ),
                ],
                null
            );
        }
    }

    // Without a roll's width batting is bought by its area.
    private Goods GoodsOf(string item) =>
        shop.Named(item, MaterialKind.Batting) is { } roll
            ? shop.ByLength(item, MaterialKind.Batting, roll)
            : shop.ByArea(item, MaterialKind.Batting, null);

    private static Message Text((Length Width, Length Length, int Count) piece) =>
        MaterialTexts.Piece(piece.Count, piece.Width, piece.Length);

    // Pieces of one item: a wrap of some sides of the foam, or wadding behind channels.
    private sealed record Use(string Item, ImmutableArray<(Length Width, Length Length, int Count)> Pieces, WrapSides? Sides);
}
