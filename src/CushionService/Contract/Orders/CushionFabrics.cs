using System.ComponentModel.DataAnnotations;

namespace CushionService.Contract.Orders;

/// <summary>Which fabric each part is made of. A part without its own entry takes the top's.</summary>
public sealed record CushionFabrics
{
    /// <summary>Fabric of the top face.</summary>
    [Required]
    public string? Top { get; init; }

    /// <summary>Fabric of the bottom face, or of both flaps of an envelope back.</summary>
    public string? Bottom { get; init; }

    /// <summary>Fabric of every side panel, the closure's strips too.</summary>
    public string? Sides { get; init; }
}
