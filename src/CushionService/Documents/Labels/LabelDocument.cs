using System.Globalization;
using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;
using CushionService.Documents.TrueSize;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;

namespace CushionService.Documents.Labels;

/// <summary>A label for each physical piece, as a document to print on sheets of labels or on a roll.</summary>
internal static class LabelDocument
{
    /// <summary>The most labels of one document.</summary>
    public const int MostLabels = 2000;

    /// <summary>The document.</summary>
    /// <param name="answer">The pieces.</param>
    /// <param name="stock">The labels to print on.</param>
    /// <param name="language">The reader's language.</param>
    /// <param name="asPdf">Whether it is a PDF, and not HTML in UTF-8.</param>
    /// <param name="cancellation">Gives up between two sheets.</param>
    /// <returns>The document, or a refusal where it would have more than <see cref="MostLabels"/>.</returns>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static PrintedDocument Write(
        PiecesAnswer answer,
        LabelStock stock,
        Language language,
        bool asPdf,
        CancellationToken cancellation
    )
    {
        long count = answer.Pieces.Sum(piece => (long)piece.Quantity);
        if (count > MostLabels)
        {
            return PrintedDocument.Refuse(
                new Violation("", "too-many-labels", DocumentTexts.TooManyLabels(count, MostLabels), null, MostLabels)
            );
        }

        var units = new OrderUnits(answer.Units, language);
        string title = units.Say(LabelTexts.Title(answer.Reference));
        return PrintedPages.Write(title, language, Pages(answer, stock, units, title), asPdf, cancellation);
    }

    private static IEnumerable<(string Drawing, Spot Size)> Pages(PiecesAnswer answer, LabelStock stock, OrderUnits units, string title)
    {
        (PieceAnswer Piece, int Copy)[] labels =
        [
            .. answer.Pieces.SelectMany(piece => Enumerable.Range(1, piece.Quantity).Select(copy => (piece, copy))),
        ];
        Dictionary<string, string> names = answer.Cushions.ToDictionary(cushion => cushion.Id, cushion => cushion.Label ?? cushion.Id);
        int number = 0;
        foreach ((PieceAnswer Piece, int Copy)[] sheet in labels.Chunk(stock.Count))
        {
            number++;
            string id = string.Create(CultureInfo.InvariantCulture, $"labels-{number}");
            var canvas = new Canvas(
                new Spot(stock.Width, stock.Height),
                1,
                id,
                units.Say(LabelTexts.Sheet(title, number)),
                units.Say(LabelTexts.Shown)
            );
            for (int i = 0; i < sheet.Length; i++)
            {
                (int row, int column) = Math.DivRem(i, stock.Columns);
                var box = new Box(stock.Left + column * (stock.Across + stock.Gap), stock.Top + row * stock.Down, stock.Across, stock.Down);
                (PieceAnswer piece, int copy) = sheet[i];
                string? cushion = piece.Cushion is { } owner ? names.GetValueOrDefault(owner, owner) : null;
                PieceLabel.Draw(canvas, box, answer.Reference, piece, cushion, copy, units);
            }

            yield return (canvas.Finish(), new Spot(stock.Width, stock.Height));
        }
    }
}
