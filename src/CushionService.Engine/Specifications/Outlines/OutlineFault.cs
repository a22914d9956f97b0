using CushionService.Engine.Measures;
using CushionService.Engine.Messages;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>A size that keeps an outline from being a shape.</summary>
/// <param name="Field">The size at fault, as the order names it in Pascal case.</param>
/// <param name="Below">What it must be less than; null when no single limit says it.</param>
/// <param name="Detail">What is wrong, and what would be right.</param>
public sealed record OutlineFault(string Field, Length? Below, Message Detail);
