namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>A directed segment of a convolution, in grid units: offsets of the moving outline from the lying one.</summary>
/// <param name="FromX">Where it begins, across the strip.</param>
/// <param name="FromY">Where it begins, along the strip.</param>
/// <param name="ToX">Where it ends, across the strip.</param>
/// <param name="ToY">Where it ends, along the strip.</param>
internal readonly record struct ConvolutionSegment(double FromX, double FromY, double ToX, double ToY);
