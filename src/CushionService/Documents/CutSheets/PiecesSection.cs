using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;

namespace CushionService.Documents.CutSheets;

/// <summary>What to cut, with a box to tick for each line.</summary>
internal static class PiecesSection
{
    public static void Add(Html html, SheetContext sheet)
    {
        html.Add($"""<section><h2>Pieces to cut</h2>""");
        HtmlTable.Open(html, "pieces", "", "No.", "Piece", "Fabric", "Cut", "Width × length", "Lay", "Marks", "Why this size", "Done");
        foreach (PieceAnswer piece in sheet.Quote.Pieces)
        {
            html.Add(
                $"""<tr><td class="number">{sheet.Pieces[piece.Id].Number}</td><th scope="row">{piece.Label ?? piece.Id}</th><td>{sheet.FabricName(piece.Fabric)}</td><td class="number">{piece.Quantity}</td>"""
            );
            html.Add(
                $"""<td class="size">{sheet.Units.Size(piece.Width, piece.Length)}{(piece.Points is null ? "" : ", outline")}</td><td><div class="lay">{new Svg(ArrowDrawing.Draw(piece.Rotation))}<span>{GrainArrow.Meaning(piece.Rotation)}</span></div></td>"""
            );
            html.Add($"""<td>{Letters(piece)}</td><td class="why">{piece.Because}</td><td></td></tr>""");
        }

        HtmlTable.Close(html);
        html.Add($"""</section>""");
    }

    private static string Letters(PieceAnswer piece) =>
        piece.Marks.Count switch
        {
            0 => "none",
            1 => "a",
            _ => $"a to {MarkWords.Letter(piece.Marks.Count - 1)}",
        };
}
