using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Contract.Orders;

/// <summary>A patch pocket on a side of the boxing, by its finished sizes.</summary>
public sealed record Pocket
{
    /// <summary>The side; the right when left out.</summary>
    public Side? Side { get; init; }

    /// <summary>Finished width.</summary>
    [Required]
    [LengthRange("1 in", "60 in")]
    public Measure? Width { get; init; }

    /// <summary>Finished height.</summary>
    [Required]
    [LengthRange("1 in", "24 in")]
    public Measure? Height { get; init; }

    /// <summary>Its fabric; that of the sides when left out.</summary>
    public string? Fabric { get; init; }
}
