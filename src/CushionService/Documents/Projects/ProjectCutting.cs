using System.Globalization;
using CushionService.Contract.Answers;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Drawings;
using CushionService.Documents.Sheets;

namespace CushionService.Documents.Projects;

/// <summary>The cutting of a project sheet: what to cut, how it lies, what is done before the first seam.</summary>
internal static class ProjectCutting
{
    /// <summary>What is on it.</summary>
    public static IEnumerable<Block> Of(Job job)
    {
        yield return new Heading(job.Say(ProjectTexts.Cut), 1);
        yield return new Heading(job.Say(ProjectTexts.Pieces), 2);
        yield return Pieces(job);
        yield return new Paragraph(job.Say(ProjectTexts.NumberPieces));
        if (ShapedPieces.Of(job) is { } shaped)
        {
            yield return shaped;
        }

        yield return new Paragraph(job.Say(ProjectTexts.CutLead));
        foreach (Block drawing in LayoutsSection.Drawings(job, isShort: true))
        {
            yield return drawing;
        }

        yield return ProjectSteps.Of(job, null);
    }

    private static Table Pieces(Job job) =>
        new(
            "",
            [
                new Column(job.Say(SheetTexts.Done), ColumnKind.Tick),
                new Column(job.Say(SheetTexts.Number), ColumnKind.Number),
                new Column(job.Say(SheetTexts.Piece), ColumnKind.Name),
                new Column(job.Say(SheetTexts.Fabric)),
                new Column(job.Say(SheetTexts.Cut), ColumnKind.Number),
                new Column(job.Say(SheetTexts.Size)),
            ],
            [.. job.Quote.Pieces.Select(piece => Line(job, piece))]
        );

    private static Row Line(Job job, PieceAnswer piece)
    {
        string size = OrderUnits.Unbroken(job.Units.Size(piece.Width, piece.Length));
        return new Row([
            new Cell(""),
            new Cell(job.Pieces[piece.Id].Number),
            new Cell(Name(job, piece)),
            new Cell(job.FabricName(piece.Fabric)),
            new Cell(piece.Quantity.ToString(CultureInfo.InvariantCulture)),
            new Cell(piece.Points is null ? size : job.Say(SheetTexts.Outline(size)), true, ArrowDrawing.Draw(piece.Rotation)),
        ]);
    }

    // With one cushion its name is on every page already.
    private static string Name(Job job, PieceAnswer piece) =>
        job.Quote.Cushions.Count == 1 && piece.Cushion is not null ? job.PartOf(piece) : job.NameOf(piece);
}
