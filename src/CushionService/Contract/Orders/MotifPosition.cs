namespace CushionService.Contract.Orders;

/// <summary>Where the first motif of a fabric is, as measured on the bolt, before washing. What is left out is unknown: the quantity is
/// then enough wherever it is.</summary>
public sealed record MotifPosition
{
    /// <summary>From the left edge of the usable width to the motif's centre.</summary>
    [LengthRange("0 in", "240 in")]
    public Measure? X { get; init; }

    /// <summary>From the cut, once squared, to the motif's centre.</summary>
    [LengthRange("0 in", "240 in")]
    public Measure? Y { get; init; }
}
