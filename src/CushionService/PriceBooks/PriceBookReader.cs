using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Pricing;
using CushionService.Intake;
using CushionService.Rest;

namespace CushionService.PriceBooks;

/// <summary>Reads a price book as strictly as an order, and finds every fault with its line.</summary>
internal static class PriceBookReader
{
    private static readonly JsonTypeInfo<PriceBookFile> FileType =
        (JsonTypeInfo<PriceBookFile>)Json.Options.GetTypeInfo(typeof(PriceBookFile));
    private static readonly PriceBookValidator Validator = new();

    /// <summary>The book that a text holds; null when it has faults.</summary>
    /// <param name="name">What orders name the book by.</param>
    /// <param name="file">What faults name the file by.</param>
    /// <param name="text">JSON text in UTF-8.</param>
    public static (PriceBookSpecification? Book, ImmutableArray<PriceBookFault> Faults) Read(
        string name,
        string file,
        ReadOnlyMemory<byte> text
    )
    {
        PointerLines lines;
        try
        {
            lines = new PointerLines(text.Span);
        }
        catch (JsonException fault)
        {
            return (null, [new PriceBookFault(file, (fault.LineNumber ?? 0) + 1, "This is not JSON.")]);
        }

        (PriceBookFile? book, IReadOnlyList<Violation> faults) = Diagnosis.Of(text, FileType);
        OrderReading reading = new(new Order { Units = book?.Units ?? Units.In, Currency = book?.Currency });
        IEnumerable<Violation> broken = book is null ? [] : OrderCheck.Broken(Validator.Check(book, reading));
        // What the form took out of the book may be missed by a rule: the form has said why.
        ImmutableArray<Violation> all =
        [
            .. faults,
            .. broken.ExceptBy(faults.Select(fault => fault.Pointer), violation => violation.Pointer),
        ];
        return all.IsEmpty
            ? (Of(name, book!, reading), [])
            : (
                null,
                [
                    .. all.Select(fault => new PriceBookFault(
                            file,
                            lines.Of(fault.Pointer),
                            $"{fault.Pointer} {fault.Code}: {fault.Detail}"
                        ))
                        .OrderBy(fault => fault.Line),
                ]
            );
    }

    private static PriceBookSpecification Of(string name, PriceBookFile book, OrderReading reading)
    {
        Currency currency = new(book.Currency!);
        return new PriceBookSpecification(
            name,
            book.Version,
            currency,
            PriceReading.Of(book.Prices!, PriceReading.None, currency),
            StockReading.Of(book.Stocks ?? [], reading),
            CostingReading.Of(book.Costing, CostingSpecification.None, currency)
        );
    }
}
