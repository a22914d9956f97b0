using System.ComponentModel.DataAnnotations;

namespace CushionService.Contract.Orders;

/// <summary>What the workroom's time costs, and how much each operation takes.</summary>
public sealed record Labour
{
    /// <summary>Price of an hour: a decimal number as text, at least 0, with at most 6 decimals.</summary>
    [Required]
    [RegularExpression(Amount.Pattern)]
    public string? HourlyRate { get; init; }

    /// <summary>Minutes for each operation; with a price book, instead of its own.</summary>
    [NumberRange(0, 100)]
    public IReadOnlyList<OperationTime>? Operations { get; init; }

    /// <summary>
    /// Share that is added to a cushion's minutes when its pieces are matched to a repeat (0.2 is 20 %); nothing when left out.
    /// </summary>
    [NumberRange(0, 5)]
    public double? Matching { get; init; }
}
