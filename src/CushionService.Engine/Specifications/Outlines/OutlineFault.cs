using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>A size that keeps an outline from being a shape.</summary>
/// <param name="Field">The size at fault.</param>
/// <param name="Below">What it must be less than; null when no single limit says it.</param>
/// <param name="Reason">What the limit is ("half the width"), or without a limit the whole fault in a sentence.</param>
public sealed record OutlineFault(string Field, Length? Below, string Reason);
