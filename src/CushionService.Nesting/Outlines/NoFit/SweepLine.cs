namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>A segment of a convolution as the sweep sees it: over a stretch of the axis, a value across that is linear in the
/// place.</summary>
/// <param name="Start">Where it begins on the axis.</param>
/// <param name="End">Where it ends, above the start.</param>
/// <param name="Value">Its value at the start.</param>
/// <param name="Slope">What the value grows by for each unit along the axis.</param>
/// <param name="Sign">What the winding number grows by above it: 1 or −1.</param>
internal readonly record struct SweepLine(double Start, double End, double Value, double Slope, int Sign)
{
    /// <summary>The value at a place from the start to the end.</summary>
    public double At(double t) => Value + Slope * (t - Start);
}
