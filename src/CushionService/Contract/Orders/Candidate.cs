using System.ComponentModel.DataAnnotations;

namespace CushionService.Contract.Orders;

/// <summary>Fabrics to try instead of one.</summary>
public sealed record Candidate
{
    /// <summary>The fabric of the order that is replaced.</summary>
    [Required]
    public string? Fabric { get; init; }

    /// <summary>The fabrics to try, one at a time: other fabrics, or the same in another width or rotation.</summary>
    [Required]
    [NumberRange(1, 20)]
    public IReadOnlyList<Fabric>? Options { get; init; }

    /// <summary>Whether each is tried a second time, with every cushion cut from a length of its own.</summary>
    public bool? Separate { get; init; }
}
