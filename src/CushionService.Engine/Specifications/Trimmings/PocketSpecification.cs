using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>A patch pocket on a side of the boxing, open above.</summary>
/// <param name="Side">The side.</param>
/// <param name="Width">Finished width.</param>
/// <param name="Height">Finished height.</param>
public sealed record PocketSpecification(Side Side, Length Width, Length Height)
{
    /// <summary>Fabric turned under at the sides and below: 3/8 in (US Army TM 10-8400-203-23, patches).</summary>
    public static Length TurnUnder { get; } = Length.FromInches(0.375m);

    /// <summary>Depth of each turn of the hem at its mouth: 1/2 in (common practice, no source).</summary>
    public static Length HemFold { get; } = Length.FromInches(0.5m);
}
