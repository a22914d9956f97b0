using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;

namespace CushionService.Documents.CutSheets;

/// <summary>A quote with what its sections share.</summary>
internal sealed class SheetContext(QuoteAnswer quote)
{
    public QuoteAnswer Quote { get; } = quote;

    /// <summary>Prints the quote's lengths.</summary>
    public OrderUnits Units { get; } = new(quote.Units);

    /// <summary>What people call a fabric: its label, or else its id.</summary>
    public string FabricName(string id) => Quote.Layouts.FirstOrDefault(layout => layout.Fabric == id)?.Label ?? id;

    /// <summary>The numbers that lists and drawings share.</summary>
    public NumberedPieces Pieces { get; } = new(quote.Pieces);
}
