namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>A forbidden open interval on a slice, both ends linear in the distance from the slab's start.</summary>
internal readonly record struct Band(double Low, double LowSlope, double High, double HighSlope)
{
    public double LowAt(double distance) => Low + LowSlope * distance;

    public double HighAt(double distance) => High + HighSlope * distance;
}
