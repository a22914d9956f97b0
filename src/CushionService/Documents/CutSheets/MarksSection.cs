using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;
using CushionService.Documents.Sheets;

namespace CushionService.Documents.CutSheets;

/// <summary>What to mark on which piece, drawn and in words; and the corners of pieces that are not rectangles.</summary>
internal static class MarksSection
{
    /// <summary>Every mark of every piece.</summary>
    public static IEnumerable<Block> Of(Job job)
    {
        PieceAnswer[] pieces = [.. job.Quote.Pieces.Where(piece => piece.Marks.Count > 0 || piece.Points is not null)];
        if (pieces.Length == 0)
        {
            yield break;
        }

        yield return new Heading(job.Say(SheetTexts.Marks), 2);
        yield return new Paragraph(job.Say(SheetTexts.MarksLead));
        for (int i = 0; i < pieces.Length; i++)
        {
            PieceAnswer piece = pieces[i];
            string number = job.Pieces[piece.Id].Number;
            var scene = new PieceScene
            {
                Piece = piece,
                Number = number,
                Units = job.Quote.Units,
                Language = job.Units.Language,
                ListsMarks = false,
                IdPrefix = FormattableString.Invariant($"piece-{i + 1}"),
            };
            yield return new Figure(PieceDrawing.Draw(scene), LayoutScale.PageWidth);
            if (piece.Marks.Count > 0)
            {
                yield return List(job, piece, number);
            }
        }
    }

    private static Table List(Job job, PieceAnswer piece, string number) =>
        new(
            "",
            [
                new Column(number, ColumnKind.Name),
                new Column(job.Say(SheetTexts.Mark)),
                new Column(job.Say(SheetTexts.Where)),
                new Column(job.Say(SheetTexts.WhatFor)),
            ],
            [
                .. piece.Marks.Select(
                    (mark, i) =>
                        Row.Of(
                            null,
                            MarkWords.Letter(i),
                            job.Say(DrawingTexts.MarkKind(mark.Kind)),
                            job.Say(MarkWords.Place(mark, job.Units)),
                            mark.Because
                        )
                ),
            ],
            "marks"
        );
}
