using CushionService.Documents.Drawings;
using CushionService.Engine.Specifications;

namespace CushionService.Documents.TrueSize;

/// <summary>Patterns at true size as a document to print, a sheet of paper to a page, after a key.</summary>
internal static class PatternDocument
{
    /// <summary>The most sheets of one document.</summary>
    public const int MostSheets = 600;

    /// <summary>The document.</summary>
    /// <param name="reference">The order's; null for none.</param>
    /// <param name="pieces">The pieces, at least one.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="units">The order's unit and the reader's language.</param>
    /// <param name="asPdf">Whether it is a PDF, and not HTML in UTF-8.</param>
    /// <param name="cancellation">Gives up between two sheets.</param>
    /// <returns>The document, or a refusal where it would take more than <see cref="MostSheets"/>.</returns>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static PrintedDocument Write(
        string? reference,
        IReadOnlyList<PatternPiece> pieces,
        Paper paper,
        OrderUnits units,
        bool asPdf,
        CancellationToken cancellation
    )
    {
        IReadOnlyList<PatternSheet> sheets = PatternSheets.Of(pieces, paper);
        if (sheets.Count > MostSheets)
        {
            return PrintedDocument.Refuse(
                new Violation("", "too-many-sheets", DocumentTexts.TooManySheets(sheets.Count, MostSheets), null, MostSheets)
            );
        }

        string title = units.Say(PatternTexts.Title(reference));
        IEnumerable<(string Drawing, Spot Size)> pages = PatternKey
            .Draw(title, sheets, paper, units)
            .Concat(sheets.Select(sheet => (PatternDrawing.Draw(sheet, sheets.Count, units), sheet.Size)));
        return PrintedPages.Write(title, units.Language, pages, asPdf, cancellation);
    }
}
