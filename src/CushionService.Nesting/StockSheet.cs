namespace CushionService.Nesting;

/// <summary>A sheet that pieces may be cut from, such as foam, or an offcut on hand.</summary>
/// <param name="Width">In grid units, above 0.</param>
/// <param name="Length">In grid units, above 0.</param>
/// <param name="Available">How many there are; null when any number can be had.</param>
/// <param name="Cost">What one costs, in any whole unit, at least 0; equal costs give the fewest sheets.</param>
public readonly record struct StockSheet(long Width, long Length, int? Available, long Cost);
