using System.Globalization;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Materials;

/// <summary>Adds up what the cushions need of each item, and rounds the sum up once to what is sold.</summary>
/// <param name="unit">The unit of lengths in derivations.</param>
internal sealed class Basket(LengthUnit unit)
{
    private readonly List<Need> _needs = [];

    // What a layout says of all needs of an item together, in the item's own measure.
    private readonly Dictionary<Goods, (decimal Amount, string Because)> _laid = [];

    /// <summary>Puts needs in.</summary>
    public void Add(IEnumerable<Need> needs) => _needs.AddRange(needs);

    /// <summary>Says how much of an item all its needs take together, where that is laid out and not added up.</summary>
    public void Lay(Goods goods, decimal amount, string because) => _laid[goods] = (amount, because);

    /// <summary>One line for each item, in the order in which they were first put in.</summary>
    public IEnumerable<Material> Lines() => _needs.GroupBy(need => need.Goods).Select(group => Line(group.Key, [.. group]));

    // A layout's amount goes before the sum of the needs. The weight is known only where every need has one.
    private Material Line(Goods goods, Need[] needs)
    {
        (decimal Amount, string Because)? laid = _laid.TryGetValue(goods, out (decimal, string) known) ? known : null;
        decimal amount = laid?.Amount ?? needs.Sum(need => need.Amount);
        Fraction needed = Fraction.Of(Rounded(amount)) / Fraction.Of(goods.PerUnit),
            sold = goods.Sale.Sell(needed);
        string reasons = string.Join("; ", needs.Select(need => $"{need.Cushion.Name}: {need.Because}"));
        string sum =
            laid is { } all ? $"; {all.Because}"
            : needs.Length > 1 ? $"; {Text(goods, amount)} in all"
            : "";
        Mass? weight = needs.All(need => need.Weight is not null)
            ? needs.Aggregate(new Mass(0), (total, need) => total + need.Weight!.Value)
            : null;
        return new Material(goods.Item, goods.Kind, sold, goods.Sale.Unit, $"{reasons}{sum}{Rounding(goods, needed, sold)}")
        {
            Label = goods.Label,
            Size = goods.Size,
            Length = goods.Length,
            IsMadeToSize = goods.IsMadeToSize,
            Cuts = [.. needs.SelectMany(need => need.Cuts)],
            Uses = [.. needs.GroupBy(need => need.Cushion.Id).Select(one => new CushionUse(one.Key, one.Sum(need => need.Amount)))],
            Weight = weight,
        };
    }

    // Counted goods that are sold one by one need no rounding.
    private string Rounding(Goods goods, Fraction needed, Fraction sold)
    {
        UnitSale sale = goods.Sale;
        if (goods.Measured == Dimension.Count && sale.Step == 1 && needed == sold)
        {
            return "";
        }

        string container = goods.Content is { } content ? $", at {Text(goods, content)} in each" : "";
        string step = sale.Unit == SaleUnit.Each && sale.Step == 1 ? "whole one" : Quantity(sale.Step, sale.Unit);
        string least = sale.Minimum > needed ? " and the least that is sold" : "";
        return $"{container}, up to the next {step}{least}: {Quantity(sold, sale.Unit)}";
    }

    private string Text(Goods goods, decimal amount) =>
        goods.Measured switch
        {
            Dimension.Length => LengthText.Format(
                Length.FromNanometres((long)amount),
                goods.Content is null ? unit
                    : unit == LengthUnit.Inch ? LengthUnit.Yard
                    : LengthUnit.Metre
            ),
            Dimension.Area => AmountText.Area(amount, unit),
            Dimension.Mass => AmountText.Weight(new Mass(amount), unit),
            _ => amount.ToString("0.##", CultureInfo.InvariantCulture),
        };

    // Areas and weights come from products with more digits than a scale shows; a millionth of a base unit is less than any of them.
    private static decimal Rounded(decimal amount) => Math.Ceiling(amount * 1_000_000) / 1_000_000;

    private static string Quantity(Fraction quantity, SaleUnit unit) => new SaleAmount(quantity, unit).ToString();
}
