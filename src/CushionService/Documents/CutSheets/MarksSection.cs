using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;

namespace CushionService.Documents.CutSheets;

/// <summary>What to mark on which piece, drawn and in words; and the corners of pieces that are not rectangles.</summary>
internal static class MarksSection
{
    public static void Add(Html html, SheetContext sheet)
    {
        List<PieceAnswer> pieces = [.. sheet.Quote.Pieces.Where(piece => piece.Marks.Count > 0 || piece.Points is not null)];
        if (pieces.Count == 0)
        {
            return;
        }

        html.Add(
            $"""<section><h2>Marks</h2><p class="lead">From the lower left corner of the piece, right side up: across the fabric, then up it. The drawings are each to a scale of their own; long pieces lie on their side.</p>"""
        );
        for (int i = 0; i < pieces.Count; i++)
        {
            PieceAnswer piece = pieces[i];
            string number = sheet.Pieces[piece.Id].Number;
            var scene = new PieceScene
            {
                Piece = piece,
                Number = number,
                Units = sheet.Quote.Units,
                ListsMarks = false,
                IdPrefix = FormattableString.Invariant($"piece-{i + 1}"),
            };
            html.Add($"""<div class="marks"><figure>{new Svg(PieceDrawing.Draw(scene))}</figure>""");
            AddList(html, sheet, piece, number);
            html.Add($"</div>");
        }

        html.Add($"""</section>""");
    }

    private static void AddList(Html html, SheetContext sheet, PieceAnswer piece, string number)
    {
        if (piece.Marks.Count == 0)
        {
            return;
        }

        HtmlTable.Open(html, "", "", number, "Mark", "Where", "What for");
        for (int i = 0; i < piece.Marks.Count; i++)
        {
            MarkAnswer mark = piece.Marks[i];
            html.Add(
                $"""<tr><th scope="row">{MarkWords.Letter(i)}</th><td>{MarkWords.Kind(mark.Kind)}</td><td>{MarkWords.Place(mark, sheet.Units)}</td><td class="why">{mark.Because}</td></tr>"""
            );
        }

        HtmlTable.Close(html);
    }
}
