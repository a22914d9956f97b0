using System.Collections.Immutable;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Pricing;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Intake;

/// <summary>What every part of an order is read by: its units, its workroom's practice, and the names that parts may use.</summary>
internal sealed class OrderContext
{
    /// <summary>The context of an order.</summary>
    /// <param name="order">The order as written.</param>
    /// <param name="book">The price book that it names; null for none, or for one that is unknown.</param>
    public OrderContext(Order order, PriceBookSpecification? book)
    {
        (Order, Book) = (order, book);
        Unit = UnitOf(order.Units);
        Practice = WorkroomPractice.Of(Unit);
        Currency = order.Currency is { } code ? new Currency(code) : book?.Currency;
    }

    /// <summary>The order as written.</summary>
    public Order Order { get; }

    /// <summary>The price book that the order names; null for none.</summary>
    public PriceBookSpecification? Book { get; }

    /// <summary>The currency of every price; null when nothing is priced.</summary>
    public Currency? Currency { get; }

    /// <summary>The unit of numbers, and of the answer.</summary>
    public LengthUnit Unit { get; }

    /// <summary>How the workroom sews and cuts: the usual practice, until the order's workroom has been read.</summary>
    public WorkroomPractice Practice { get; set; }

    /// <summary>The cushions of the order, and after them those of its bays.</summary>
    public ImmutableArray<OrderedCushion> Cushions { get; set; } = [];

    /// <summary>The only fabric, which parts without an entry are made of; null when there are several.</summary>
    public string? OnlyFabric => Order.Fabrics is [{ Id: { } id }] ? id : null;

    /// <summary>The stocks that the order may take from: its own, and after them those of its price book.</summary>
    public ImmutableArray<NamedStock> Stocks { get; private set; } = [];

    /// <summary>Takes the stocks that have been read.</summary>
    /// <param name="read">The order's stocks in their order, null for each that was refused, and after them the price book's.</param>
    public void Offer(IReadOnlyList<StockSpecification?> read)
    {
        IReadOnlyList<Stock?> written = Order.Stocks ?? [];
        Stocks =
        [
            .. written.Select(
                (stock, i) =>
                    new NamedStock(stock?.Id, stock?.Kind, read[i]?.Density, stock?.Density is not null)
                    {
                        Label = stock?.Label,
                        Size = NamedStock.SizeOf(read[i]),
                        Sold = read[i]?.Sold?.Unit,
                        Oversize = read[i]?.Oversize,
                        Firmness = read[i]?.Firmness?.Newtons,
                    }
            ),
            .. read.Skip(written.Count)
                .OfType<StockSpecification>()
                .Select(stock => new NamedStock(stock.Id, stock.Kind, stock.Density, stock.Density is not null)
                {
                    Label = stock.Label,
                    Size = NamedStock.SizeOf(stock),
                    Sold = stock.Sold?.Unit,
                    Oversize = stock.Oversize,
                    Firmness = stock.Firmness?.Newtons,
                }),
        ];
    }

    /// <summary>The unit of an order's numbers; inches where it says nothing.</summary>
    /// <param name="units">The units as written; null, or no member of the enumeration, for an order that is refused for it.</param>
    public static LengthUnit UnitOf(Units? units) =>
        units switch
        {
            Units.Cm => LengthUnit.Centimetre,
            Units.Mm => LengthUnit.Millimetre,
            _ => LengthUnit.Inch,
        };

    /// <summary>The stock of a name; null when there is none.</summary>
    public NamedStock? Stock(string? name) => name is null ? null : Stocks.FirstOrDefault(stock => stock.Id == name);

    /// <summary>A fabric of the order; null when no fabric has the id.</summary>
    public Fabric? Fabric(string? id) => id is null ? null : Order.Fabrics?.FirstOrDefault(fabric => fabric?.Id == id);
}
