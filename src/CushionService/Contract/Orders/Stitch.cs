using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Practices;

namespace CushionService.Contract.Orders;

/// <summary>The stitch that seams are sewn with, from which thread is computed.</summary>
public sealed record Stitch
{
    /// <summary>Its type, as ISO 4915 has it.</summary>
    [Required]
    public StitchType? Type { get; init; }

    /// <summary>Thickness of what is sewn, all layers together.</summary>
    [Required]
    [LengthRange("0.001 in", "1 in")]
    public Measure? Thickness { get; init; }

    /// <summary>Length of one stitch; 1/8 in, or 3 mm in a metric order, when left out.</summary>
    [LengthRange("1/32 in", "1/2 in", Default = "1/8 in, or 3 mm in a metric order")]
    public Measure? StitchLength { get; init; }

    /// <summary>Width of an overedge or a safety stitch; 1/4 in, or 6 mm in a metric order, when left out.</summary>
    [LengthRange("1/32 in", "1/2 in", Default = "1/4 in, or 6 mm in a metric order")]
    public Measure? Bight { get; init; }
}
