using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications;

namespace CushionService.Contract.Orders;

/// <summary>The finished outline of a face.</summary>
public sealed record Outline
{
    /// <summary>The kind of outline.</summary>
    [Required]
    public OutlineKind? Kind { get; init; }

    /// <summary>From left to right, for a rectangle.</summary>
    [LengthRange("2 in", "240 in")]
    public Measure? Width { get; init; }

    /// <summary>From front to back, for a rectangle.</summary>
    [LengthRange("2 in", "240 in")]
    public Measure? Depth { get; init; }
}
