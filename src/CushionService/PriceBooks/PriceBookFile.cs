using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using CushionService.Contract;
using CushionService.Contract.Orders;

namespace CushionService.PriceBooks;

/// <summary>A price book as a shop writes it: one JSON file, which orders name by the file's name without its ending.
/// Its prices hold for every order that names it, except where the order has a price of its own.</summary>
internal sealed record PriceBookFile
{
    /// <summary>Where an editor finds the schema of this file: <c>/schemas/price-book.json</c> of the service. It is not
    /// read.</summary>
    [JsonPropertyName("$schema")]
    [MaxLength(1000)]
    public string? Schema { get; init; }

    /// <summary>The shop's own word for this version; at most 100 characters.</summary>
    [MaxLength(100)]
    public string? Version { get; init; }

    /// <summary>ISO 4217 code of every price in the book.</summary>
    [Required]
    [RegularExpression(CurrencyCode.Pattern)]
    public string? Currency { get; init; }

    /// <summary>The unit of lengths that are written as numbers; inches when left out.</summary>
    public Units? Units { get; init; }

    /// <summary>Prices of fabric and of everything else, each item once; at most 20 000.</summary>
    [Required]
    [NumberRange(0, 20_000)]
    public IReadOnlyList<ItemPrice>? Prices { get; init; }

    /// <summary>Materials other than fabric as the shop stocks them, each once; at most 1 000.</summary>
    [NumberRange(0, 1000)]
    public IReadOnlyList<Stock>? Stocks { get; init; }

    /// <summary>What the shop says of its items, each item once; at most 20 000.</summary>
    [NumberRange(0, 20_000)]
    public IReadOnlyList<Good>? Goods { get; init; }

    /// <summary>What is charged beyond materials.</summary>
    public Costing? Costing { get; init; }
}
