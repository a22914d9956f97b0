namespace CushionService.Nesting;

/// <summary>A rectangle on the kernel's integer grid, such as a flaw in the fabric.</summary>
/// <param name="X">Left edge, in grid units.</param>
/// <param name="Y">Lower edge, in grid units.</param>
/// <param name="Width">Extent across the strip, in grid units, above 0.</param>
/// <param name="Length">Extent along the strip, in grid units, above 0.</param>
public readonly record struct GridRectangle(long X, long Y, long Width, long Length);
