using System.ComponentModel.DataAnnotations;

namespace CushionService.Contract.Orders;

/// <summary>How long an operation takes.</summary>
public sealed record OperationTime
{
    /// <summary>A construction, which is all that is not counted besides; a closure; or one of <c>round</c>, <c>welt</c> and <c>ruffle</c>
    /// (a loop each), <c>flat-piping</c>, <c>bought-trim</c> and <c>topstitching</c> (a loop each too), <c>french-seam</c>,
    /// <c>channel</c>, <c>tuft</c>, <c>tie</c> (a pair), <c>strap</c>, <c>handle</c>, <c>pocket</c>, <c>eyelet</c>, <c>anti-slip</c>,
    /// <c>inner-cover</c>.</summary>
    [Required]
    [MaxLength(64)]
    public string? Operation { get; init; }

    /// <summary>Minutes that it takes once, for one cushion.</summary>
    [Required]
    [NumberRange(0, 10_000)]
    public double? Minutes { get; init; }
}
