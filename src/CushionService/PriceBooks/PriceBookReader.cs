using System.Buffers;
using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Pricing;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Intake;
using CushionService.Json;

namespace CushionService.PriceBooks;

/// <summary>Reads a price book as strictly as an order, by the same rules, and finds every error with its
/// line.</summary>
internal static class PriceBookReader
{
    private static readonly JsonTypeInfo<PriceBookFile> FileType =
        (JsonTypeInfo<PriceBookFile>)ContractJson.Options.GetTypeInfo(typeof(PriceBookFile));
    private static readonly PriceBookValidator Validator = new();

    // Some editors write it.
    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>Reads a book.</summary>
    /// <param name="name">The name that orders give for the book.</param>
    /// <param name="file">The name of the file, for its errors.</param>
    /// <param name="text">JSON text in UTF-8.</param>
    /// <returns>The book without errors; or null and all errors, by line.</returns>
    public static (PriceBookSpecification? Book, ImmutableArray<PriceBookError> Errors) Read(
        string name,
        string file,
        ReadOnlyMemory<byte> text
    )
    {
        if (text.Span.StartsWith(ByteOrderMark))
        {
            text = text[ByteOrderMark.Length..];
        }

        if (InvalidAt(text.Span) is { } line)
        {
            return (null, [new PriceBookError(file, line, "This is not text in UTF-8.")]);
        }

        PointerLines lines;
        try
        {
            lines = new PointerLines(text.Span);
        }
        catch (JsonException exception)
        {
            // The exception counts lines from 0.
            return (null, [new PriceBookError(file, (exception.LineNumber ?? 0) + 1, "This is not JSON.")]);
        }

        if (!IsObject(text.Span))
        {
            return (null, [new PriceBookError(file, 1, " wrong-type: A price book is an object, in braces.")]);
        }

        (PriceBookFile? book, IReadOnlyList<Violation> violations) = FormDiagnosis.Of(text, FileType);
        // The rules run on what could be read, so that one start reports everything.
        FindingList found = new();
        PriceBookSpecification? specification = book is null ? null : Of(name, book, found);
        // What could not be read was left out of the book, and a rule may report it as missing: the first error says
        // why.
        ImmutableArray<Violation> all =
        [
            .. violations,
            .. found.Violations.ExceptBy(violations.Select(violation => violation.Pointer), violation => violation.Pointer),
        ];
        MessageWriter words = new(Language.English, OrderContext.UnitOf(book?.Units));
        return all.IsEmpty
            ? (specification, [])
            : (
                null,
                [
                    .. all.Select(violation => new PriceBookError(
                            file,
                            lines.Of(violation.Pointer),
                            $"{violation.Pointer} {violation.Code}: {words.Text(violation.Detail)}"
                        ))
                        .OrderBy(violation => violation.Line),
                ]
            );
    }

    private static bool IsObject(ReadOnlySpan<byte> json)
    {
        Utf8JsonReader reader = new(json);
        return reader.Read() && reader.TokenType == JsonTokenType.StartObject;
    }

    // The line of the first bytes that are not UTF-8, or of a zero, which is a sign of UTF-16; null when all is well.
    private static long? InvalidAt(ReadOnlySpan<byte> text)
    {
        int zero = text.IndexOf((byte)0),
            at = 0;
        while (at < text.Length && Rune.DecodeFromUtf8(text[at..], out _, out int length) == OperationStatus.Done)
        {
            at += length;
        }

        int wrong = zero < 0 ? at : Math.Min(zero, at);
        return wrong == text.Length ? null : 1 + text[..wrong].Count((byte)'\n');
    }

    // By the code that reads the same parts of an order, so that a price means the same in both. Null without a
    // currency, since no price means anything without one; that it is missing or malformed is among the findings.
    private static PriceBookSpecification? Of(string name, PriceBookFile book, FindingList found)
    {
        Findings findings = new(OrderContext.UnitOf(book.Units), found);
        bool sound = RecordForm<PriceBookFile>.Read(book, findings).IsSound;
        foreach ((int i, Good? good) in (book.Goods ?? []).Index())
        {
            if (good is not null)
            {
                RecordForm<Good>.Read(good, findings.Within(nameof(book.Goods), i));
            }
        }

        findings.Report(Validator.Validate(book));
        Currency? currency = sound ? new Currency(book.Currency!) : null;
        StockSpecification?[] stocks = StockIntake.Read(book.Stocks, nameof(book.Stocks), findings);
        StockNames.UnitsAgree(book.Stocks, book.Prices, nameof(book.Prices), findings);
        ImmutableDictionary<string, ItemPriceSpecification> prices = PriceIntake.Read(
            book.Prices,
            ImmutableDictionary<string, ItemPriceSpecification>.Empty,
            currency,
            nameof(book.Prices),
            findings
        );
        CostingSpecification costing = CostingIntake.Read(
            book.Costing,
            CostingSpecification.None,
            currency,
            findings.Within(nameof(book.Costing))
        );
        return currency is { } known
            ? new PriceBookSpecification(name, book.Version, known, prices, [.. stocks.OfType<StockSpecification>()], costing)
            {
                Goods = GoodsOf(book.Goods),
            }
            : null;
    }

    // An item that is there twice is among the findings, and then the book is not used.
    private static ImmutableDictionary<string, GoodSpecification> GoodsOf(IReadOnlyList<Good>? goods) =>
        (goods ?? [])
            .Where(good => good?.Item is not null)
            .DistinctBy(good => good.Item)
            .ToImmutableDictionary(good => good.Item!, good => new GoodSpecification(good.Label, good.Link));
}
