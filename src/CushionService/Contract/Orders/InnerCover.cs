using System.ComponentModel.DataAnnotations;

namespace CushionService.Contract.Orders;

/// <summary>A cover for a loose fill within the cover, of the same size and shape, closed by hand.</summary>
public sealed record InnerCover
{
    /// <summary>Its fabric.</summary>
    [Required]
    public string? Fabric { get; init; }
}
