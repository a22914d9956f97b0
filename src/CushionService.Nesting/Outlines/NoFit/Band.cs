namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>A forbidden open interval on a slice, both ends linear in the distance from the slab's start.</summary>
/// <param name="Low">Where the interval begins, at the start of the slab.</param>
/// <param name="LowSlope">What that grows by for each unit along the slab.</param>
/// <param name="High">Where it ends, at the start of the slab.</param>
/// <param name="HighSlope">What that grows by.</param>
internal readonly record struct Band(double Low, double LowSlope, double High, double HighSlope)
{
    /// <summary>Where the interval begins at a distance from the slab's start.</summary>
    public double LowAt(double distance) => Low + LowSlope * distance;

    /// <summary>Where it ends there.</summary>
    public double HighAt(double distance) => High + HighSlope * distance;
}
