using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Contract.Orders;

/// <summary>A handle on the boxing, by its finished sizes.</summary>
public sealed record Handle
{
    /// <summary>What it is made of.</summary>
    [Required]
    public HandleKind? Kind { get; init; }

    /// <summary>The side that it is on; the front when left out.</summary>
    public Side? Side { get; init; }

    /// <summary>The sides that have one each, in place of <c>side</c>: two sides for two handles.</summary>
    [NumberRange(1, 2)]
    public IReadOnlyList<Side>? Sides { get; init; }

    /// <summary>Finished width.</summary>
    [Required]
    [LengthRange("1/2 in", "4 in")]
    public Measure? Width { get; init; }

    /// <summary>Finished length.</summary>
    [Required]
    [LengthRange("2 in", "60 in")]
    public Measure? Length { get; init; }

    /// <summary>Distance between its sewn ends; shorter than the length, so that a hand fits under.</summary>
    [Required]
    [LengthRange("2 in", "60 in")]
    public Measure? Span { get; init; }

    /// <summary>Its fabric; that of the sides when left out.</summary>
    public string? Fabric { get; init; }
}
