using System.ComponentModel.DataAnnotations;

namespace CushionService.Contract.Orders;

/// <summary>Cloths to try in the place of one.</summary>
public sealed record Candidate
{
    /// <summary>The cloth of the order that is replaced.</summary>
    [Required]
    public string? Fabric { get; init; }

    /// <summary>The cloths to try, one at a time: other cloths, or the same in another width or rotation.</summary>
    [Required]
    [NumberRange(1, 20)]
    public IReadOnlyList<Fabric>? Options { get; init; }

    /// <summary>Whether each is tried a second time, with every cushion cut from a length of its own.</summary>
    public bool? Separate { get; init; }
}
