using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Documents;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Exchange;
using CushionService.Documents.Labels;
using CushionService.Documents.Pictures;
using CushionService.Documents.Projects;
using CushionService.Documents.Sheets;
using CushionService.Documents.TrueSize;
using CushionService.Engine.Quoting;
using CushionService.Intake;
using CushionService.Nesting;

namespace CushionService.Desk;

/// <summary>The purposes of orders that are answered with a document, made of what the engine drafted.</summary>
internal static class Printing
{
    /// <summary>Pieces for pattern and cutting programs.</summary>
    /// <param name="piece">The id of one piece; null for all.</param>
    public static Purpose<PrintedDocument> Exchange(string? piece) =>
        new(
            Purpose.Making,
            (order, _) =>
            {
                PatternPiece[] pieces =
                [
                    .. PatternPiece.Of(order.Drafting, order.Unit, order.Language).Where(one => piece is null || one.Answer.Id == piece),
                ];
                return pieces.Length == 0
                    ? PrintedDocument.Missing
                    : PrintedDocument.Of(PatternExchange.Write(pieces, order.Order.Reference, order.Order.Units!.Value));
            }
        );

    /// <summary>The documents of a quote: the ticket, all there is, or the project sheet.</summary>
    /// <param name="detail">Which of them, by its name; null for the ticket.</param>
    /// <param name="paper">The name of the paper; null for the usual one of the order's units.</param>
    /// <param name="asPdf">Whether the document is a PDF, and not HTML.</param>
    /// <param name="shop">Whose name the project sheet has.</param>
    public static Purpose<PrintedDocument> Quote(string? detail, string? paper, bool asPdf, ShopDetails shop) =>
        new(
            Purpose.Making,
            (order, cancellation) =>
            {
                (Quote quote, QuoteAnswer answer) = Purposes.Quoted(order, cancellation, onPaper: true);
                JobPictures pictures = JobPictures.Of(quote, order.Language, cancellation);
                Job job = Job.Of(answer, quote, order.Order, order.Language, pictures);
                Paper? named = paper is null ? null : Paper.Named(paper);
                Sheet sheet = detail switch
                {
                    QuoteDetail.Full => CutSheet.Of(job, named),
                    QuoteDetail.Project => ProjectSheet.Of(job, shop, named),
                    _ => Ticket.Of(job, named),
                };
                return pictures.Drawn() > PrintedDocument.MostBytes
                    ? PrintedDocument.TooLong(pictures.Drawn())
                    : SheetDocument.Write(sheet, asPdf, cancellation);
            }
        );

    /// <summary>A label for each physical piece.</summary>
    /// <param name="stock">The name of the labels to print on; null for the usual ones of the order's units.</param>
    /// <param name="asPdf">Whether the document is a PDF, and not HTML.</param>
    public static Purpose<PrintedDocument> Labels(string? stock, bool asPdf) =>
        new(
            Purpose.Making,
            (order, cancellation) =>
                LabelDocument.Write(
                    OnPaper(Purposes.Pieces.Answer(order, cancellation), order),
                    stock is null ? LabelStock.For(order.Order.Units!.Value) : LabelStock.Named(stock)!,
                    order.Language,
                    asPdf,
                    cancellation
                )
        );

    private static PiecesAnswer OnPaper(PiecesAnswer answer, CheckedOrder order) =>
        answer with
        {
            Pieces = PieceNames.WithFabrics(answer.Pieces, order.Drafting, order.Language),
        };

    /// <summary>The picture of a cushion.</summary>
    /// <param name="cushion">The id of the cushion; null where the order has one.</param>
    /// <param name="view">What is shown.</param>
    public static Purpose<PrintedDocument> Picture(string? cushion, PictureView view) =>
        new(
            Purpose.Making,
            (order, cancellation) =>
                CushionPicture.Of(order.Drafting, cushion, order.Order.Effort ?? Effort.Quick, order.Language, view, cancellation)
        )
        {
            UsualEffort = Effort.Quick,
        };

    /// <summary>Patterns at true size.</summary>
    /// <param name="paper">The name of the paper; null for the usual one of the order's units.</param>
    /// <param name="piece">The id of one piece; null for all that are no plain rectangles.</param>
    /// <param name="asPdf">Whether the document is a PDF, and not HTML.</param>
    public static Purpose<PrintedDocument> Patterns(string? paper, string? piece, bool asPdf) =>
        new(
            Purpose.Making,
            (order, cancellation) =>
            {
                Units units = order.Order.Units!.Value;
                IReadOnlyList<PatternPiece> pieces = PatternPiece.Chosen(
                    PatternPiece.Of(order.Drafting, order.Unit, order.Language),
                    piece
                );
                return pieces.Count == 0
                    ? PrintedDocument.Missing
                    : PatternDocument.Write(
                        order.Order.Reference,
                        pieces,
                        paper is null ? Paper.For(units) : Paper.Named(paper)!,
                        new OrderUnits(units, order.Language),
                        asPdf,
                        cancellation
                    );
            }
        );
}
