using System.ComponentModel.DataAnnotations;

namespace CushionService.Contract.Orders;

/// <summary>A cushion, by its finished sizes, measured on the seam lines.</summary>
public sealed record Cushion : CushionMake
{
    /// <summary>The finished outline of the face; of a flanged cushion the body's, of a bolster the end's.</summary>
    [Required]
    public Outline? Outline { get; init; }
}
