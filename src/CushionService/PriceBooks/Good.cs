using System.ComponentModel.DataAnnotations;
using CushionService.Contract.Orders;

namespace CushionService.PriceBooks;

/// <summary>What a shop says of an item that it sells: printed on project sheets, where a customer looks for it.</summary>
internal sealed record Good
{
    /// <summary>The item, as the prices name it.</summary>
    [Required]
    [RegularExpression(Identifier.Pattern)]
    public string? Item { get; init; }

    /// <summary>What customers call it, where the order has no label; at most 200 characters.</summary>
    [MaxLength(200)]
    public string? Label { get; init; }

    /// <summary>The page on which it is sold, an address of https; at most 500 characters.</summary>
    [RegularExpression("^https://[!-~]{1,492}$")]
    public string? Link { get; init; }
}
