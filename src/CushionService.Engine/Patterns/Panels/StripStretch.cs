using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns.Panels;

/// <summary>A stretch of a strip, along x, that lies on one side of the cushion.</summary>
/// <param name="Length">Finished length.</param>
/// <param name="IsFront">Whether it is the front, where no join should show.</param>
public readonly record struct StripStretch(Length Length, bool IsFront);
