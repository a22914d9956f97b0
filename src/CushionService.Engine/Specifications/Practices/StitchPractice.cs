using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Practices;

/// <summary>A stitch's sizes where an order does not say.</summary>
/// <param name="StitchLength">Length of one stitch: 8 stitches an inch, or 3 mm.</param>
/// <param name="Bight">Width of an overedge: 1/4 in, or 6 mm.</param>
/// <remarks>Common practice, no source.</remarks>
public sealed record StitchPractice(Length StitchLength, Length Bight)
{
    /// <summary>A workroom that measures in inches.</summary>
    public static StitchPractice Imperial { get; } = new(Length.FromInches(0.125m), Length.FromInches(0.25m));

    /// <summary>A workroom that measures in millimetres.</summary>
    public static StitchPractice Metric { get; } = new(Length.FromMillimetres(3), Length.FromMillimetres(6));
}
