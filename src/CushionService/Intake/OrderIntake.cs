using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Pricing;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Nesting;

namespace CushionService.Intake;

/// <summary>Checks an order and specifies it, in one pass: each field is read once, and the value that passed its check is the one that is
/// specified.</summary>
/// <remarks>No length is read twice: it is measured against its range where it is read, and that value is specified.</remarks>
internal static class OrderIntake
{
    // It keeps nothing of an order, so that all threads share one.
    private static readonly OrderValidator Validator = new();

    private static readonly Regex Due = TextPattern.Of(DueDay.Pattern);

    /// <summary>The order as the engine works from it, or why there is none.</summary>
    /// <param name="order">The order as written.</param>
    /// <param name="book">The price book that it names; null for none, or for one that is unknown.</param>
    /// <param name="purpose">What it is sent for.</param>
    /// <returns>The specification, or every broken rule; and what is allowed but unwise in either case.</returns>
    public static IntakeResult Read(Order order, PriceBookSpecification? book, Purpose purpose)
    {
        OrderContext context = new(order, book);
        FindingList found = new();
        Findings findings = new(context.Unit, found);
        // The form first, then the rules of the whole, then each part. Findings are sorted at the end, so this order is not seen.
        RecordForm<Order>.Read(order, findings);
        findings.Report(Validator.Validate(order));
        PurposeIntake.Check(order, purpose, findings);
        BookIsKnown(order, book, findings);
        DueIsADay(order, findings);
        OrderSpecification specification = Specified(context, purpose, findings);
        if (found.IsSound)
        {
            UnknownShrinkage.Check(specification, findings);
        }

        return new IntakeResult(found.IsSound ? specification : null, found.Violations, found.Warnings);
    }

    // In the order of what refers to what: the workroom's practice and the stocks come before the fabrics and the cushions that use them.
    // Where a rule is broken the specification has gaps, and is not used.
    private static OrderSpecification Specified(OrderContext context, Purpose purpose, Findings findings)
    {
        (Order order, PriceBookSpecification? book) = (context.Order, context.Book);
        context.Practice = WorkroomIntake.Read(order.Workroom, context.Practice, findings.Within(nameof(order.Workroom)));
        StockSpecification?[] stocks = StockIntake.Read(order.Stocks, nameof(order.Stocks), findings);
        // An order's own stock comes before the price book's of the same id.
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
        context.Cushions = Cushions(order, context, findings);
        // Names are checked once all fabrics are known; the cushions below may then take them as they are.
        FabricUse.Check(context, findings);
        return new OrderSpecification
        {
            Unit = context.Unit,
            Currency = context.Currency,
            Effort = order.Effort ?? Effort.Standard,
            Cushions = [.. context.Cushions.Select(cushion => CushionIntake.Read(cushion, context)).OfType<CushionSpecification>()],
            Rows = RowIntake.Read(context, findings),
            Pieces = Each<LoosePiece, LoosePieceSpecification>(
                order.Pieces,
                nameof(order.Pieces),
                (piece, i, at) => LoosePieceIntake.Read(piece, i, context, at),
                findings
            ),
            Fabrics = fabrics,
            Workroom = context.Practice,
            Stocks = [.. stocks.OfType<StockSpecification>()],
            // The order's prices are added to the price book's, and come before them.
            Prices = PriceIntake.Read(
                order.Prices,
                book?.Prices ?? ImmutableDictionary<string, ItemPriceSpecification>.Empty,
                context.Currency,
                nameof(order.Prices),
                findings
            ),
            PriceBook = book,
            Lines = ChargeIntake.Lines(order.Lines, context.Currency, findings),
            Costing = CostingIntake.Read(
                order.Costing,
                book?.Costing ?? CostingSpecification.None,
                context.Currency,
                findings.Within(nameof(order.Costing))
            ),
        };
    }

    // The order's own, and after them those of its bays.
    private static ImmutableArray<OrderedCushion> Cushions(Order order, OrderContext context, Findings findings) =>
        [
            .. (order.Cushions ?? [])
                .Index()
                .Where(cushion => cushion.Item is not null)
                .Select(cushion => new OrderedCushion(
                    cushion.Item,
                    $"/cushions/{cushion.Index}",
                    findings.Within(nameof(order.Cushions), cushion.Index)
                )),
            .. BayIntake.Read(order, context, findings),
        ];

    // An order in another currency than its price book would be priced in two.
    private static void BookIsKnown(Order order, PriceBookSpecification? book, Findings findings)
    {
        if (order.PriceBook is { } name && book is null)
        {
            findings.Refuse(nameof(order.PriceBook), "unknown-price-book", OrderTexts.UnknownPriceBook(name));
        }
        // Amounts of the order are in its own currency, so both must be the same.
        else if (book is not null && order.Currency is { } currency && book.Currency.Code != currency)
        {
            findings.Refuse(nameof(order.Currency), "wrong-currency", OrderTexts.WrongCurrency(book.Name, book.Currency.Code));
        }
    }

    // The form of a day allows a thirtieth of February.
    private static void DueIsADay(Order order, Findings findings)
    {
        if (
            order.Due is { } due
            && Due.IsMatch(due)
            && !DateOnly.TryParseExact(due, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _)
        )
        {
            findings.Refuse(nameof(order.Due), "bad-form", FieldTexts.Day(FieldNames.Words(nameof(order.Due))));
        }
    }

    // Gaps are reported with the order; what was refused is left out, and then there is no order.
    // The place of each entry is made whether or not anything is found there: it costs an object, and no text.
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
