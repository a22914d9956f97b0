namespace CushionService.LoadTests;

/// <summary>What a caller checks of an answer.</summary>
/// <param name="Number">Its line or number, from 1.</param>
/// <param name="Refused">Whether it is a refusal.</param>
/// <param name="Reference">The order's reference; null in a refusal.</param>
internal readonly record struct Answer(long Number, bool Refused, string? Reference);
