using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Pricing;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Nesting;

namespace CushionService.Intake;

/// <summary>Checks an order and specifies it, in one pass: each field is read once, and the value that passed its check is the one that is
/// specified.</summary>
internal static class OrderIntake
{
    private static readonly OrderValidator Validator = new();

    /// <summary>The order as the engine works from it, or why there is none.</summary>
    /// <param name="order">The order as written.</param>
    /// <param name="book">The price book that it names; null for none, or for one that is unknown.</param>
    /// <param name="purpose">What it is sent for.</param>
    public static IntakeResult Read(Order order, PriceBookSpecification? book, Purpose purpose)
    {
        OrderContext context = new(order, book);
        FindingList found = new();
        Findings findings = new(context.Unit, found);
        RecordForm<Order>.Read(order, findings);
        findings.Report(Validator.Validate(order));
        PurposeIntake.Check(order, purpose, findings);
        BookIsKnown(order, book, findings);
        OrderSpecification specification = Specified(context, purpose, findings);
        if (found.IsSound)
        {
            UnknownShrinkage.Check(specification, findings);
        }

        return new IntakeResult(found.IsSound ? specification : null, found.Violations, found.Warnings);
    }

    private static OrderSpecification Specified(OrderContext context, Purpose purpose, Findings findings)
    {
        (Order order, PriceBookSpecification? book) = (context.Order, context.Book);
        context.Practice = WorkroomIntake.Read(order.Workroom, context.Practice, findings.Within(nameof(order.Workroom)));
        StockSpecification?[] stocks = StockIntake.Read(order.Stocks, nameof(order.Stocks), findings);
        if (book is not null)
        {
            stocks = [.. stocks, .. book.Stocks.Where(stock => order.Stocks?.Any(own => own?.Id == stock.Id) != true)];
        }

        context.Offer(stocks);
        StockNames.UnitsAgree(order.Stocks, order.Prices, nameof(order.Prices), findings);
        ImmutableArray<FabricSpecification> fabrics = Each<Fabric, FabricSpecification>(
            order.Fabrics,
            nameof(order.Fabrics),
            (fabric, i, at) => FabricIntake.Read(fabric, i, context, purpose, at),
            findings
        );
        FabricUse.Check(context, findings);
        return new OrderSpecification
        {
            Unit = context.Unit,
            Currency = context.Currency,
            Effort = order.Effort ?? Effort.Standard,
            Cushions = Each<Cushion, CushionSpecification>(
                order.Cushions,
                nameof(order.Cushions),
                (cushion, i, at) => CushionIntake.Read(cushion, i, context, at),
                findings
            ),
            Rows = RowIntake.Read(order, findings),
            Pieces = Each<LoosePiece, LoosePieceSpecification>(
                order.Pieces,
                nameof(order.Pieces),
                (piece, i, at) => LoosePieceIntake.Read(piece, i, context, at),
                findings
            ),
            Fabrics = fabrics,
            Workroom = context.Practice,
            Stocks = [.. stocks.OfType<StockSpecification>()],
            Prices = PriceIntake.Read(
                order.Prices,
                book?.Prices ?? ImmutableDictionary<string, ItemPriceSpecification>.Empty,
                context.Currency,
                nameof(order.Prices),
                findings
            ),
            PriceBook = book,
            Costing = CostingIntake.Read(
                order.Costing,
                book?.Costing ?? CostingSpecification.None,
                context.Currency,
                findings.Within(nameof(order.Costing))
            ),
        };
    }

    private static void BookIsKnown(Order order, PriceBookSpecification? book, Findings findings)
    {
        if (order.PriceBook is { } name && book is null)
        {
            findings.Refuse(nameof(order.PriceBook), "unknown-price-book", OrderTexts.UnknownPriceBook(name));
        }
        else if (book is not null && order.Currency is { } currency && book.Currency.Code != currency)
        {
            findings.Refuse(nameof(order.Currency), "wrong-currency", OrderTexts.WrongCurrency(book.Name, book.Currency.Code));
        }
    }

    // Gaps are reported with the order; what was refused is left out, and then there is no order.
    private static ImmutableArray<TTo> Each<TFrom, TTo>(
        IReadOnlyList<TFrom?>? entries,
        string list,
        Func<TFrom, int, Findings, TTo?> read,
        Findings findings
    )
        where TFrom : class
        where TTo : class
    {
        if (entries is not { Count: > 0 })
        {
            return [];
        }

        var all = ImmutableArray.CreateBuilder<TTo>(entries.Count);
        for (int i = 0; i < entries.Count; i++)
        {
            if (entries[i] is { } entry && read(entry, i, findings.Within(list, i)) is { } one)
            {
                all.Add(one);
            }
        }

        return all.DrainToImmutable();
    }
}
