namespace CushionService.Contract.Answers;

/// <summary>Some of a line of cushions.</summary>
/// <param name="Cushion">The cushion's id.</param>
/// <param name="Quantity">How many of it.</param>
public sealed record CushionCountAnswer(string Cushion, int Quantity);
