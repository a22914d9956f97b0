using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>What the closure of a cover takes: a zipper, or hook-and-loop tape.</summary>
/// <param name="order">The order, for the stocks that a zipper with closed ends is chosen from.</param>
/// <param name="shop">How chain, sliders and tape are sold.</param>
internal sealed class ClosureNeeds(OrderSpecification order, Shop shop)
{
    /// <summary>The item that a zipper is priced as where no stock is known.</summary>
    public const string Zipper = "zipper";

    /// <summary>The item that sliders for zipper chain are priced as where no stock is known.</summary>
    public const string Slider = "slider";

    /// <summary>The item that hook-and-loop tape is priced as where no stock is known.</summary>
    public const string HookAndLoopTape = "hook-and-loop-tape";

    /// <summary>What one cushion line takes.</summary>
    /// <param name="cushion">A cushion line; amounts are for all its copies.</param>
    /// <param name="pattern">The pattern of its outer cover.</param>
    /// <returns>Nothing for a closure that is made of fabric and thread alone.</returns>
    public IEnumerable<Need> Of(CushionSpecification cushion, Pattern pattern) =>
        cushion.Closure switch
        {
            ZipperClosure zipper => ClosedZipper.For(cushion, pattern, order.Stocks) is { } closed
                ? [Closed(cushion, closed, zipper)]
                : Chain(cushion, pattern, zipper),
            HookAndLoopClosure hook => [Tape(cushion, hook, pattern)],
            _ => [],
        };

    // A zipper with closed ends is bought one by one, in lengths that the stock has; the reason says how it fits its seam.
    private Need Closed(CushionSpecification cushion, ClosedZipper zipper, ZipperClosure wanted)
    {
        (int count, Length length, Length seam, string? name) = (cushion.Quantity, zipper.Stock.Length!.Value, zipper.Seam, Named(wanted));
        Message because =
            zipper.Shortened ? MaterialTexts.ZipperShortened(count, name, length, seam, zipper.Room)
            : length > zipper.Room ? MaterialTexts.ZipperCaught(count, name, length, seam)
            : zipper.IsTooShort ? MaterialTexts.ZipperShort(count, name, length, seam, zipper.Shortfall, zipper.Room)
            : MaterialTexts.ZipperFits(count, name, length, seam, zipper.Room);
        Goods goods = shop.Each(zipper.Stock.Id, MaterialKind.Zipper, zipper.Stock) with { Apart = wanted.Wanted };
        return new Need(cushion, goods, count, because);
    }

    // Chain from a roll needs sliders; a zipper that is made to its length has one.
    private IEnumerable<Need> Chain(CushionSpecification cushion, Pattern pattern, ZipperClosure zipper)
    {
        Length chain = Closing.ZipperChain(cushion, pattern);
        StockSpecification? stock = shop.Stocked(MaterialKind.Zipper, zipper => zipper.Length is null);
        Message because = MaterialTexts.Chain(cushion.Quantity, chain, Named(zipper));
        if (!IsChain(shop))
        {
            yield return new Need(
                cushion,
                shop.Each(Zipper, MaterialKind.Zipper, stock) with
                {
                    // Each length is a line of its own, as each is another article.
                    Apart = (chain, zipper.Wanted, zipper.Sliders),
                    Length = chain,
                    IsMadeToSize = true,
                },
                cushion.Quantity,
                zipper.Sliders == 1 ? because : MaterialTexts.ChainWithSliders(cushion.Quantity, chain, Named(zipper), zipper.Sliders)
            );
            yield break;
        }

        yield return new Need(
            cushion,
            shop.ByLength(Zipper, MaterialKind.Zipper, stock) with
            {
                Apart = zipper.Wanted,
            },
            cushion.Quantity * chain.Nanometres,
            because
        );
        yield return new Need(
            cushion,
            shop.Each(Slider, MaterialKind.Slider, shop.Stocked(MaterialKind.Slider)) with
            {
                Apart = zipper.Wanted,
            },
            cushion.Quantity * zipper.Sliders,
            MaterialTexts.Sliders(cushion.Quantity, zipper.Sliders, Named(zipper))
        );
    }

    /// <summary>Whether a zipper without closed ends is cut from a roll: where a stock or a price says yards or metres, and also for a
    /// stocked chain whose price says nothing.</summary>
    /// <param name="shop">How zippers are sold.</param>
    /// <returns>False where neither is known: then it is bought made up to its length, as a shop without a roll would.</returns>
    public static bool IsChain(Shop shop)
    {
        StockSpecification? stock = shop.Stocked(MaterialKind.Zipper, zipper => zipper.Length is null);
        return shop.IsSoldBy(stock?.Id ?? Zipper, stock, SaleUnit.Yd, SaleUnit.M)
            || (stock is not null && !shop.IsSoldBy(stock.Id, stock, SaleUnit.Each));
    }

    // Hook and loop are sold as one length of both.
    private Need Tape(CushionSpecification cushion, HookAndLoopClosure hook, Pattern pattern)
    {
        (Length section, Length tape) = TapeOf(cushion, pattern);
        StockSpecification? stock = shop.Stocked(
            MaterialKind.HookAndLoopTape,
            one => (one.Width is null || one.Width == hook.TapeWidth) && shop.Holds(one, tape)
        );
        Goods goods = shop.ByLength(HookAndLoopTape, MaterialKind.HookAndLoopTape, stock);
        return new Need(
            cushion,
            goods with
            {
                Apart = hook.TapeWidth,
                Size = goods.Size ?? new MaterialSize(hook.TapeWidth, null, null),
            },
            cushion.Quantity * tape.Nanometres,
            MaterialTexts.HookAndLoopTape(cushion.Quantity, tape, hook.TapeWidth, section, cushion.Practice.Closures.TapeClearance)
        )
        {
            Whole = (tape, cushion.Quantity),
        };
    }

    /// <summary>The section of a hook-and-loop closure, and the tape of either kind in it, to the workroom's measuring step.</summary>
    /// <param name="cushion">A cushion that hook-and-loop tape closes.</param>
    /// <param name="pattern">Its pattern.</param>
    public static (Length Section, Length Tape) TapeOf(CushionSpecification cushion, Pattern pattern)
    {
        Length section = Fastenings.Run(pattern).RoundUpTo(cushion.Practice.MeasuringStep);
        return (section, Closing.Tape(section, cushion.Practice.Closures));
    }

    private static string? Named(ZipperClosure zipper) => zipper.Wanted.Length == 0 ? null : zipper.Wanted;
}
