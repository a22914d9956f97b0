using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>What an order's stocks and prices say of how items are sold; what they leave open, the trade's usual way.</summary>
/// <param name="order">The order.</param>
internal sealed class Shop(OrderSpecification order)
{
    private static readonly SaleUnit[] Lengths = [SaleUnit.Yd, SaleUnit.M];
    private static readonly SaleUnit[] Areas = [SaleUnit.SqYd, SaleUnit.SqM];
    private static readonly SaleUnit[] Weights = [SaleUnit.Lb, SaleUnit.Kg];

    private bool Imperial => order.Unit == LengthUnit.Inch;

    /// <summary>Pounds or kilograms.</summary>
    public SaleUnit ByWeight => Imperial ? SaleUnit.Lb : SaleUnit.Kg;

    /// <summary>The first stock of a kind that suits; null when the order has none.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="suits">What it must have besides; null for nothing. The order's own sequence of stocks decides
    /// between several.</param>
    public StockSpecification? Stocked(MaterialKind kind, Func<StockSpecification, bool>? suits = null) =>
        order.Stocks.FirstOrDefault(stock => stock.Kind == kind && (suits is null || suits(stock)));

    /// <summary>The stock of a name and a kind; null when the order has none.</summary>
    public StockSpecification? Named(string item, MaterialKind kind) => Stocked(kind, stock => stock.Id == item);

    /// <summary>Goods that are counted.</summary>
    /// <param name="item">What they are called where no stock is known.</param>
    /// <param name="kind">Their kind.</param>
    /// <param name="stock">The stock; null where none is known.</param>
    public Goods Each(string item, MaterialKind kind, StockSpecification? stock) =>
        Sized(
            new Goods(stock?.Id ?? item, kind, Dimension.Count, Sale(stock?.Id ?? item, stock, [SaleUnit.Each], null, holds: false)),
            stock
        );

    /// <summary>Goods by length, in yards or metres, or in spools or rolls that hold so much.</summary>
    /// <param name="item">What they are called where no stock is known.</param>
    /// <param name="kind">Their kind.</param>
    /// <param name="stock">The stock; null where none is known.</param>
    /// <param name="usualStep">The step where nothing says one; null for 1/8 yd or 0.1 m.</param>
    /// <returns>Of a stock that is sold one by one, the content of a spool or roll is its length, which intake asks
    /// for.</returns>
    public Goods ByLength(string item, MaterialKind kind, StockSpecification? stock, Fraction? usualStep = null) =>
        Holding(Of(item, kind, Dimension.Length, stock, Lengths, usualStep, stock?.Length is not null), stock?.Length?.Nanometres);

    /// <summary>Goods by area.</summary>
    /// <param name="item">What they are called where no stock is known.</param>
    /// <param name="kind">Their kind.</param>
    /// <param name="stock">The stock; null where none is known. One with a coverage (a can of adhesive) is counted by
    /// what it covers.</param>
    public Goods ByArea(string item, MaterialKind kind, StockSpecification? stock) =>
        Of(item, kind, Dimension.Area, stock, Areas, null, holds: false) with
        {
            Content = stock?.Coverage * Dimension.Area.In(SaleUnit.SqM),
        };

    /// <summary>Goods by weight, or in bags that hold so much.</summary>
    /// <param name="item">What they are called where no stock is known.</param>
    /// <param name="kind">Their kind.</param>
    /// <param name="stock">The stock; null where none is known.</param>
    public Goods ByMass(string item, MaterialKind kind, StockSpecification? stock) =>
        Holding(Of(item, kind, Dimension.Mass, stock, Weights, null, stock?.Weight is not null), stock?.Weight?.Grams);

    /// <summary>Whether an item is sold by one of some units: its stock's, or else its price's.</summary>
    /// <param name="item">What prices name it by.</param>
    /// <param name="stock">The stock; null where none is known.</param>
    /// <param name="units">The units that suit.</param>
    /// <returns>False where neither a stock's sale nor a price says a unit.</returns>
    public bool IsSoldBy(string item, StockSpecification? stock, params ReadOnlySpan<SaleUnit> units) =>
        stock?.Sold is { } sold
            ? units.Contains(sold.Unit)
            : order.Prices.TryGetValue(item, out ItemPriceSpecification? price) && units.Contains(price.Per);

    /// <summary>Whether a length can be cut from a stock in one piece.</summary>
    /// <param name="stock">A stock by length, or in spools or packs that hold so much.</param>
    /// <param name="each">The length.</param>
    public bool Holds(StockSpecification stock, Length each) =>
        stock.Length is not { } content || content >= each || !IsSoldBy(stock.Id, stock, SaleUnit.Each);

    // Spools, rolls and bags are counted by what each of them holds.
    private static Goods Holding(Goods goods, decimal? content) =>
        goods.Sale.Unit == SaleUnit.Each ? goods with { Content = content } : goods;

    private Goods Of(
        string item,
        MaterialKind kind,
        Dimension measured,
        StockSpecification? stock,
        SaleUnit[] units,
        Fraction? usualStep,
        bool holds
    ) => Sized(new Goods(stock?.Id ?? item, kind, measured, Sale(stock?.Id ?? item, stock, units, usualStep, holds)), stock);

    // Of a foam sheet the length is its depth; of a zipper it is its own; of what comes on spools and rolls it is their content.
    private static Goods Sized(Goods goods, StockSpecification? stock)
    {
        if (stock is null)
        {
            return goods;
        }

        bool sheet = stock.Kind == MaterialKind.Foam,
            form = stock.Kind == MaterialKind.Form,
            cord = stock.Kind is MaterialKind.Cord or MaterialKind.LipCord;
        Length? width = stock.Width ?? (cord ? null : stock.Diameter),
            depth = sheet ? stock.Length
            : form && stock.Length is null ? stock.Depth ?? stock.Diameter
            : null,
            thickness = stock.Thickness ?? (cord ? stock.Diameter : null);
        return goods with
        {
            Label = stock.Label,
            Size = (width ?? depth ?? thickness) is null ? null : new MaterialSize(width, depth, thickness),
            Length = sheet ? null : stock.Length,
        };
    }

    // A price in another unit than the item is sold by does not apply; what holds a known amount may have a price for each.
    private UnitSale Sale(string item, StockSpecification? stock, SaleUnit[] units, Fraction? usualStep, bool holds)
    {
        if (stock?.Sold is { } sold)
        {
            return sold;
        }

        if (stock?.Coverage is not null)
        {
            return UnitSale.Usual(SaleUnit.Each);
        }

        ItemPriceSpecification? price =
            order.Prices.TryGetValue(item, out ItemPriceSpecification? known)
            && (units.Contains(known.Per) || (holds && known.Per == SaleUnit.Each))
                ? known
                : null;
        SaleUnit unit = price?.Per ?? (Imperial ? units[0] : units[^1]);
        Fraction usual = unit == SaleUnit.Each ? UnitSale.UsualStep(unit) : usualStep ?? UnitSale.UsualStep(unit);
        return new UnitSale(unit, price?.Step ?? usual, price?.Minimum ?? 0);
    }
}
