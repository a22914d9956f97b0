namespace CushionService.Bulk;

/// <summary>A line of a file of answers.</summary>
/// <param name="Text">A quote or a problem, in JSON, without the end of the line.</param>
/// <param name="IsProblem">Whether it says why there is no quote.</param>
internal readonly record struct BulkLine(ReadOnlyMemory<byte> Text, bool IsProblem);
