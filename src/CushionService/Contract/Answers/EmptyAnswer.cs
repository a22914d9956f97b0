namespace CushionService.Contract.Answers;

/// <summary>A rectangle of an offcut on which nothing lies.</summary>
/// <param name="X">From the left edge of the usable width.</param>
/// <param name="Y">From the start of the offcut.</param>
/// <param name="Width">Across.</param>
/// <param name="Length">Along.</param>
public sealed record EmptyAnswer(double X, double Y, double Width, double Length);
