using System.ComponentModel.DataAnnotations;
using CushionService.Nesting;

namespace CushionService.Contract.Orders;

/// <summary>Cushions to be made and pieces to be cut, with the fabric they are made of.</summary>
public sealed record Order
{
    /// <summary>The caller's own name for the order, repeated in the answer; at most 100 characters.</summary>
    [MaxLength(100)]
    public string? Reference { get; init; }

    /// <summary>The unit of every length that is written as a number, and of the answer.</summary>
    [Required]
    public Units? Units { get; init; }

    /// <summary>ISO 4217 code of every price in the order, and of its price book; needed when the order has a price.</summary>
    [RegularExpression(CurrencyCode.Pattern)]
    public string? Currency { get; init; }

    /// <summary>Who it is for: printed, not stored; at most 200 characters.</summary>
    [MaxLength(200)]
    public string? Customer { get; init; }

    /// <summary>The day on which it is due (<c>2026-12-24</c>): printed, not stored.</summary>
    [RegularExpression(DueDay.Pattern)]
    public string? Due { get; init; }

    /// <summary>A note to the workroom: printed, not stored; at most 2000 characters.</summary>
    [MaxLength(2000)]
    public string? Note { get; init; }

    /// <summary>How hard to search for a short layout; standard when left out.</summary>
    public Effort? Effort { get; init; }

    /// <summary>The cushions; with none, the order is a plain nesting of its pieces.</summary>
    [NumberRange(0, 200)]
    public IReadOnlyList<Cushion>? Cushions { get; init; }

    /// <summary>Seats along the walls of bays and corners, each a set of cushions; none when left out.</summary>
    [NumberRange(0, 50)]
    public IReadOnlyList<Bay>? Bays { get; init; }

    /// <summary>Cushions that lie beside each other; none when left out.</summary>
    [NumberRange(0, 200)]
    public IReadOnlyList<Row>? Rows { get; init; }

    /// <summary>The maker's own pieces, laid out beside those of the cushions.</summary>
    [NumberRange(0, 500)]
    public IReadOnlyList<LoosePiece>? Pieces { get; init; }

    /// <summary>The fabrics.</summary>
    [Required]
    [NumberRange(1, 50)]
    public IReadOnlyList<Fabric>? Fabrics { get; init; }

    /// <summary>How the workroom sews and cuts, where it differs from the trade's defaults.</summary>
    public Workroom? Workroom { get; init; }

    /// <summary>Materials other than fabric as the shop stocks them; of a kind, the first that suits is taken.</summary>
    [NumberRange(0, 200)]
    public IReadOnlyList<Stock>? Stocks { get; init; }

    /// <summary>Prices of what is bought besides fabric; each replaces the price book's.</summary>
    [NumberRange(0, 500)]
    public IReadOnlyList<ItemPrice>? Prices { get; init; }

    /// <summary>The price book that gives what the order does not: prices, how items are sold, costing, and the currency.</summary>
    [RegularExpression(Identifier.Pattern)]
    public string? PriceBook { get; init; }

    /// <summary>What else is sold with it, such as its delivery; nothing when left out.</summary>
    [NumberRange(0, 100)]
    public IReadOnlyList<FreeLine>? Lines { get; init; }

    /// <summary>What is charged beyond materials; only materials when left out.</summary>
    public Costing? Costing { get; init; }

    /// <summary>Fabrics to try instead of others; in a comparison only.</summary>
    [NumberRange(1, 10)]
    public IReadOnlyList<Candidate>? Candidates { get; init; }
}
