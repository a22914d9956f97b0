using System.Globalization;
using CushionService.Contract.Answers;

namespace CushionService.Documents.Drawings;

/// <summary>The pieces of an answer with the numbers that drawings and lists share: 1 for the first.</summary>
internal sealed class NumberedPieces
{
    private readonly Dictionary<string, (string Number, PieceAnswer Piece)> _byId = new(StringComparer.Ordinal);

    /// <summary>Numbers pieces in the answer's order, which every document of it shares.</summary>
    public NumberedPieces(IReadOnlyList<PieceAnswer> pieces)
    {
        for (int i = 0; i < pieces.Count; i++)
        {
            _byId.TryAdd(pieces[i].Id, ((i + 1).ToString(CultureInfo.InvariantCulture), pieces[i]));
        }
    }

    /// <summary>A piece and its number.</summary>
    /// <param name="id">The piece's id.</param>
    /// <exception cref="InvalidOperationException">The answer places or handles a piece that it does not list.</exception>
    public (string Number, PieceAnswer Piece) this[string id] =>
        _byId.TryGetValue(id, out var found)
            ? found
            : throw new InvalidOperationException($"The answer names a piece that it does not list: {id}.");
}
