namespace CushionService.Contract.Answers;

/// <summary>A point, from the lower left corner of what it belongs to.</summary>
/// <param name="X">Across the cloth.</param>
/// <param name="Y">Along the cloth.</param>
public sealed record PointAnswer(double X, double Y);
