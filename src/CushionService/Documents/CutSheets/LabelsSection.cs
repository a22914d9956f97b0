using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;

namespace CushionService.Documents.CutSheets;

/// <summary>A label for each piece, to cut out and pin to its pile.</summary>
internal static class LabelsSection
{
    public static void Add(Html html, SheetContext sheet)
    {
        html.Add($"""<section><h2 class="page">Labels</h2><div class="labels">""");
        foreach (PieceAnswer piece in sheet.Quote.Pieces)
        {
            html.Add($"""<div class="label"><strong>{sheet.Pieces[piece.Id].Number}: {piece.Label ?? piece.Id}</strong>""");
            html.Add(
                $"""<div class="size">{sheet.Units.Size(piece.Width, piece.Length)}</div><div>{sheet.FabricName(piece.Fabric)}, cut {piece.Quantity}</div>"""
            );
            html.Add(
                $"""<div class="lay">{new Svg(ArrowDrawing.Draw(piece.Rotation))}<span>{GrainArrow.Meaning(piece.Rotation)}</span></div><div class="why">{sheet.Quote.Reference}</div></div>"""
            );
        }

        html.Add($"""</div></section>""");
    }
}
