namespace CushionService.Nesting;

/// <summary>A point on the kernel's integer grid; x runs across the strip, y along it.</summary>
/// <param name="X">Across the strip, in grid units.</param>
/// <param name="Y">Along the strip, in grid units.</param>
public readonly record struct GridPoint(long X, long Y);
