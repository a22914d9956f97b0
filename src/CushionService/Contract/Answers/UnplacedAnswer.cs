namespace CushionService.Contract.Answers;

/// <summary>A piece that found no place.</summary>
/// <param name="Piece">The piece's id.</param>
/// <param name="Copies">How many copies.</param>
public sealed record UnplacedAnswer(string Piece, int Copies);
