using CushionService.Engine.Measures;
using CushionService.Engine.Messages;

namespace CushionService.Engine.Materials;

/// <summary>Adds up what the cushions need of each item, and rounds the sum up once to what is sold.</summary>
internal sealed class Basket
{
    // A line of more needs than this names the first few alone.
    private const int MostNamed = 12;
    private const int FewNamed = 3;

    private readonly List<Need> _needs = [];

    // What a layout says of all needs of an item together, in the item's own measure.
    private readonly Dictionary<Goods, (decimal Amount, Message Because)> _laid = [];

    /// <summary>Puts needs in.</summary>
    /// <param name="needs">Amounts are for all copies of a cushion line; none is rounded to a unit of sale yet.</param>
    public void Add(IEnumerable<Need> needs) => _needs.AddRange(needs);

    /// <summary>Says how much of an item all its needs take together, where that is laid out and not added up.</summary>
    /// <param name="goods">The item, equal by value to that of the needs: items that differ in what keeps them apart have
    /// lines of their own.</param>
    /// <param name="amount">How much of it, in its base unit.</param>
    /// <param name="because">How that was found, in place of the sum.</param>
    public void Lay(Goods goods, decimal amount, Message because) => _laid[goods] = (amount, because);

    /// <summary>One line for each item, in the order in which they were first put in.</summary>
    /// <remarks>The sum is rounded up once, not each need: three cushions of 0.3 yd at a step of 1/8 yd are 1 yd, not 1
    /// 1/8.</remarks>
    public IEnumerable<Material> Lines() => _needs.GroupBy(need => need.Goods).Select(group => Line(group.Key, [.. group]));

    // A layout's amount goes before the sum of the needs. The weight is known only where every need has one.
    private Material Line(Goods goods, Need[] needs)
    {
        (decimal Amount, Message Because)? laid = _laid.TryGetValue(goods, out (decimal, Message) known) ? known : Packed(goods, needs);
        decimal amount = laid?.Amount ?? needs.Sum(need => need.Amount);
        Fraction needed = Fraction.Of(Rounded(amount)) / Fraction.Of(goods.PerUnit),
            sold = goods.Sale.Sell(needed);
        Mass? weight = needs.All(need => need.Weight is not null)
            ? needs.Aggregate(new Mass(0), (total, need) => total + need.Weight!.Value)
            : null;
        return new Material(goods.Item, goods.Kind, sold, goods.Sale.Unit, Because(goods, needs, laid, amount))
        {
            Label = goods.Label,
            Size = goods.Size,
            Length = goods.Length,
            IsMadeToSize = goods.IsMadeToSize,
            Cuts = [.. needs.SelectMany(need => need.Cuts)],
            // Shares of the cost are allotted by these, so they stay as needed, before rounding and before a layout.
            Uses = [.. needs.GroupBy(need => need.Cushion.Id).Select(one => new CushionUse(one.Key, one.Sum(need => need.Amount)))],
            Weight = weight,
        };
    }

    // Off spools and packs each length is cut whole; what one has left over is no use to a longer one.
    private static (decimal Amount, Message Because)? Packed(Goods goods, Need[] needs) =>
        goods.Content is { } content && needs.All(need => need.Whole is not null)
            ? (content * Packs.For(Length.FromNanometres((long)content), needs.Select(need => need.Whole!.Value)), MaterialTexts.NotJoined)
            : null;

    // Counted goods that are sold one by one need no rounding.
    private static Message Because(Goods goods, Need[] needs, (decimal Amount, Message Because)? laid, decimal amount)
    {
        UnitSale sale = goods.Sale;
        Fraction needed = Fraction.Of(Rounded(amount)) / Fraction.Of(goods.PerUnit),
            sold = sale.Sell(needed);
        bool rounded = goods.Measured != Dimension.Count || sale.Step != 1 || needed != sold;
        return MaterialTexts.Line(
            [.. Named(needs)],
            laid?.Because,
            laid is null && needs.Length > 1 ? Text(goods, amount) : null,
            rounded && goods.Content is { } content ? Text(goods, content) : null,
            sale.Unit == SaleUnit.Each && sale.Step == 1 ? null : new SaleAmount(sale.Step, sale.Unit),
            sale.Minimum > needed,
            rounded ? new SaleAmount(sold, sale.Unit) : null
        );
    }

    // Nobody reads a line of a hundred cushions: the first show how it is reckoned, and how many follow is said.
    private static IEnumerable<Message> Named(Need[] needs)
    {
        int named = needs.Length > MostNamed ? FewNamed : needs.Length;
        foreach (Need need in needs[..named])
        {
            yield return MaterialTexts.OfCushion(need.Cushion.Name, need.Because);
        }

        if (named < needs.Length)
        {
            yield return MaterialTexts.MoreCushions(needs[named..].Select(need => need.Cushion.Id).Distinct().Count());
        }
    }

    private static Message Text(Goods goods, decimal amount) =>
        goods.Measured switch
        {
            Dimension.Length when goods.Content is null => MaterialTexts.Length(Length.FromNanometres((long)amount)),
            Dimension.Length => MaterialTexts.Run(Length.FromNanometres((long)amount)),
            Dimension.Area => MaterialTexts.Area(Area.FromSquareMillimetres(amount)),
            Dimension.Mass => MaterialTexts.Mass(new Mass(amount)),
            _ => MaterialTexts.Number(amount),
        };

    // Areas and weights come from products with more digits than a scale shows; a millionth of a base unit is less than any of them.
    private static decimal Rounded(decimal amount) => Math.Ceiling(amount * 1_000_000) / 1_000_000;
}
