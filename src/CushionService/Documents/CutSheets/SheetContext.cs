using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;

namespace CushionService.Documents.CutSheets;

/// <summary>A quote with what its sections share.</summary>
internal sealed class SheetContext(QuoteAnswer quote)
{
    public QuoteAnswer Quote { get; } = quote;

    /// <summary>Prints the quote's lengths.</summary>
    public OrderUnits Units { get; } = new(quote.Units);

    /// <summary>The numbers that lists and drawings share.</summary>
    public NumberedPieces Pieces { get; } = new(quote.Pieces);
}
