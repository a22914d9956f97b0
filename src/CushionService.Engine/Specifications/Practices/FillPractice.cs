using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Practices;

/// <summary>How foam and loose fills are fitted where an order does not say, and where a fit becomes unwise.</summary>
/// <remarks>Common practice, no source. How much larger foam is cut is the workroom's
/// <see cref="WorkroomPractice.FoamOversize"/>.</remarks>
public sealed record FillPractice
{
    /// <summary>A workroom that measures in inches.</summary>
    public static FillPractice Imperial { get; } =
        new() { LargestOversize = Length.FromInches(0.5m), LargestCoatedOversize = Length.FromInches(0.25m) };

    /// <summary>A workroom that measures in millimetres.</summary>
    public static FillPractice Metric { get; } =
        new() { LargestOversize = Length.FromMillimetres(12), LargestCoatedOversize = Length.FromMillimetres(6) };

    /// <summary>Foam is cut up to this much over the cover for a tight fit; more is hard to put in and strains the seams.</summary>
    public required Length LargestOversize { get; init; }

    /// <summary>The same under coated fabric, which does not give.</summary>
    public required Length LargestCoatedOversize { get; init; }

    /// <summary>How full a cover is packed with loose fill, as a fraction of its volume.</summary>
    public decimal Plumpness { get; init; } = 0.9m;
}
