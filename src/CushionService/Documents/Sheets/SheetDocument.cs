using CushionService.Documents.Drawings;
using CushionService.Documents.Pdf;
using CushionService.Engine.Specifications;

namespace CushionService.Documents.Sheets;

/// <summary>A sheet as a document: HTML, or a PDF.</summary>
internal static class SheetDocument
{
    /// <summary>The most pages of one document.</summary>
    public const int MostPages = 600;

    /// <summary>The document.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="asPdf">Whether it is a PDF, and not HTML in UTF-8.</param>
    /// <param name="cancellation">Gives up between two pages.</param>
    /// <returns>The document, or a refusal where it would take more than <see cref="MostPages"/>.</returns>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static PrintedDocument Write(Sheet sheet, bool asPdf, CancellationToken cancellation)
    {
        if (!asPdf)
        {
            return PrintedDocument.Of(SheetHtml.Write(sheet, cancellation));
        }

        (int count, IEnumerable<(string Drawing, Spot Size)> pages) = SheetPages.Of(sheet, cancellation);
        return count > MostPages
            ? PrintedDocument.Refuse(new Violation("", "too-many-sheets", DocumentTexts.TooManyPages(count, MostPages), null, MostPages))
            : PrintedDocument.Of(PdfPaper.Write(sheet.Title, [.. pages], cancellation));
    }
}
