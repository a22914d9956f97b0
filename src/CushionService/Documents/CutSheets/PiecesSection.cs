using System.Globalization;
using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;
using CushionService.Documents.Sheets;

namespace CushionService.Documents.CutSheets;

/// <summary>What to cut, with a box to tick for each line, and under it why it is so large.</summary>
internal static class PiecesSection
{
    private const int MostPlaces = 6;

    /// <summary>Every piece.</summary>
    public static IEnumerable<Block> Of(Job job) =>
        [
            new Heading(job.Say(SheetTexts.PiecesToCut), 2),
            Table(
                job,
                [.. job.Quote.Pieces],
                [new Column(job.Say(SheetTexts.Marks))],
                static (job, piece) => [Letters(job, piece)],
                static (_, piece) => piece.Because
            ),
        ];

    /// <summary>The pieces of one cushion, or of none, and where they lie.</summary>
    /// <param name="job">The quote.</param>
    /// <param name="cushion">The id of the cushion; null for pieces of the maker's own.</param>
    public static Table Placed(Job job, string? cushion) =>
        Table(job, [.. job.Quote.Pieces.Where(piece => piece.Cushion == cushion)], [], static (_, _) => [], Note, cushion is not null);

    private static Table Table(
        Job job,
        IReadOnlyList<PieceAnswer> pieces,
        IReadOnlyList<Column> more,
        Func<Job, PieceAnswer, IEnumerable<string>> cells,
        Func<Job, PieceAnswer, string> note,
        bool byPart = false
    ) =>
        new(
            "",
            [
                new Column(job.Say(SheetTexts.Number), ColumnKind.Number),
                new Column(job.Say(SheetTexts.Piece), ColumnKind.Name),
                new Column(job.Say(SheetTexts.Fabric)),
                new Column(job.Say(SheetTexts.Cut), ColumnKind.Number),
                new Column(job.Say(SheetTexts.Size)),
                new Column(job.Say(SheetTexts.Lay)),
                .. more,
                new Column(job.Say(SheetTexts.Done), ColumnKind.Tick),
            ],
            [
                .. pieces.Select(piece => new Row(
                    [.. Cells(job, piece, byPart ? job.PartOf(piece) : job.NameOf(piece), cells(job, piece))],
                    note(job, piece)
                )),
            ],
            "pieces"
        );

    private static IEnumerable<Cell> Cells(Job job, PieceAnswer piece, string name, IEnumerable<string> more) =>
        [
            new Cell(job.Pieces[piece.Id].Number),
            new Cell(name),
            new Cell(job.FabricName(piece.Fabric)),
            new Cell(piece.Quantity.ToString(CultureInfo.InvariantCulture)),
            new Cell(Size(job, piece), Bold: true),
            new Cell(job.Say(GrainArrow.Meaning(piece.Rotation)), Sign: ArrowDrawing.Draw(piece.Rotation)),
            .. more.Select(text => new Cell(text)),
            new Cell(""),
        ];

    private static string Size(Job job, PieceAnswer piece)
    {
        string size = OrderUnits.Unbroken(job.Units.Size(piece.Width, piece.Length));
        return piece.Points is null ? size : job.Say(SheetTexts.Outline(size));
    }

    private static string Note(Job job, PieceAnswer piece)
    {
        PlacementAnswer[] places = [.. job.Quote.Layouts.SelectMany(layout => layout.Placements).Where(at => at.Piece == piece.Id)];
        string[] shown =
        [
            .. places.Take(MostPlaces).Select(at => job.Say(DrawingTexts.Spot(job.Units.Number(at.X), job.Units.Text(at.Y)))),
        ];
        return shown.Length == 0 ? piece.Because : $"{job.Say(SheetTexts.Lies(shown, places.Length - shown.Length))} {piece.Because}";
    }

    private static string Letters(Job job, PieceAnswer piece) =>
        piece.Marks.Count switch
        {
            0 => job.Say(SheetTexts.NoMarks),
            1 => MarkWords.Letter(0),
            _ => job.Say(SheetTexts.Letters(MarkWords.Letter(0), MarkWords.Letter(piece.Marks.Count - 1))),
        };
}
