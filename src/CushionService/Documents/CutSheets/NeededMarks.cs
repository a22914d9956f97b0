using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;
using CushionService.Documents.Sheets;

namespace CushionService.Documents.CutSheets;

/// <summary>The marks of one cushion that must be measured: pieces with the same marks are drawn once, two beside each other.</summary>
internal static class NeededMarks
{
    private const double Width = 90;
    private const int MostListed = 8;

    /// <summary>A sentence for the usual marks, and the drawings of pieces that need more.</summary>
    public static IEnumerable<Block> Of(Job job, IEnumerable<PieceAnswer> pieces)
    {
        IReadOnlyList<Block>[] drawn =
        [
            .. pieces
                .Select(piece => (Piece: piece, Need: MarkNeed.Of(piece)))
                .Where(one => one.Need.Needed > 0 || one.Piece.Points is not null)
                .GroupBy(one => Shape(one.Piece))
                .Select(same => Drawn(job, [.. same.Select(one => one.Piece)], same.First().Need)),
        ];
        yield return new Heading(job.Say(SheetTexts.Marks), 2);
        yield return new Paragraph(job.Say(drawn.Length == 0 ? SheetTexts.UsualMarks : SheetTexts.MoreMarksLead));
        foreach (IReadOnlyList<Block>[] two in drawn.Chunk(2))
        {
            yield return new Beside([(0.5, two[0]), (0.5, two.Length > 1 ? two[1] : [])]);
        }
    }

    private static string Shape(PieceAnswer piece) =>
        string.Join(
            ';',
            piece
                .Marks.Where(mark => mark.Kind is not (Engine.Patterns.Panels.MarkKind.FaceName or Engine.Patterns.Panels.MarkKind.UpArrow))
                .Select(mark => $"{mark.Kind} {mark.X} {mark.Y} {mark.ToX} {mark.ToY}")
                .Append($"{piece.Width} {piece.Length} {piece.Points?.Count}")
        );

    private static IReadOnlyList<Block> Drawn(Job job, IReadOnlyList<PieceAnswer> same, (IReadOnlyList<MarkAnswer> Marks, int Needed) need)
    {
        PieceAnswer first = same[0];
        string[] numbers = job.Numbers(same.Select(piece => piece.Id));
        var scene = new PieceScene
        {
            Piece = first with { Marks = need.Marks, Label = job.PartOf(first) },
            Number = job.Say(SheetTexts.NumberList(numbers)),
            IsOfSeveral = same.Count > 1,
            Units = job.Quote.Units,
            Language = job.Units.Language,
            ListsMarks = false,
            Lettered = need.Needed,
            Width = Width,
            IdPrefix = $"marks-{numbers[0]}",
        };
        return [new Figure(PieceDrawing.Draw(scene), Width), .. Lines(job, [.. need.Marks.Take(need.Needed)])];
    }

    // A line for each kind: "a, b: notch: a 3 in across, 0 up; b ...".
    private static IEnumerable<Block> Lines(Job job, IReadOnlyList<MarkAnswer> marks)
    {
        var groups = marks.Select((mark, i) => (Letter: MarkWords.Letter(i), Mark: mark)).GroupBy(one => one.Mark.Kind);
        foreach (var group in groups)
        {
            (string Letter, MarkAnswer Mark)[] all = [.. group];
            yield return new Paragraph(
                job.Say(
                    SheetTexts.MarkLine(
                        DrawingTexts.MarkKind(group.Key),
                        [.. all.Take(MostListed).Select(one => SheetTexts.MarkPlace(one.Letter, MarkWords.Place(one.Mark, job.Units)))],
                        all.Length - Math.Min(all.Length, MostListed)
                    )
                ),
                Tone.Small
            );
        }
    }
}
