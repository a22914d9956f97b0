namespace CushionService.Contract.Answers;

/// <summary>A rectangle of the length sold on which nothing lies, and which cannot be made larger.</summary>
/// <param name="Width">Across.</param>
/// <param name="Length">Along.</param>
/// <param name="X">From the left edge of the usable width.</param>
/// <param name="Y">From the start of the layout.</param>
public sealed record RemnantAnswer(double Width, double Length, double X, double Y);
