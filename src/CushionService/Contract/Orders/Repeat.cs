using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Contract.Orders;

/// <summary>The repeat of a fabric's motif, as measured on the bolt, before washing. It has a length, a width, or both.</summary>
public sealed record Repeat
{
    /// <summary>Along the fabric; nothing is matched along when left out: stripes up the bolt.</summary>
    [LengthRange("1/4 in", "72 in")]
    public Measure? Length { get; init; }

    /// <summary>Across the fabric; nothing is matched across when left out: bands across the bolt.</summary>
    [LengthRange("1/4 in", "120 in")]
    public Measure? Width { get; init; }

    /// <summary>How the motif moves from column to column; straight when left out.</summary>
    public DropKind? Drop { get; init; }

    /// <summary>Where the first motif is; unknown when left out.</summary>
    public MotifPosition? Motif { get; init; }
}
