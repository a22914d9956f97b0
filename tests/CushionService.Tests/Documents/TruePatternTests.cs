using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Documents;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Drawings;

namespace CushionService.Tests.Documents;

public sealed class TruePatternTests
{
    private static readonly PieceAnswer Round = Scenarios.Nook().Pieces[8];

    [Theory]
    [InlineData("A4", 210, 297)]
    [InlineData("letter", 215.9, 279.4)]
    public void A_millimetre_of_the_sheet_is_a_millimetre_of_the_piece(string name, double width, double height)
    {
        Paper paper = name == "A4" ? Paper.A4 : Paper.Letter;
        foreach (ParsedDrawing sheet in TruePattern.Sheets(Round, Units.In, paper).Select(svg => new ParsedDrawing(svg)))
        {
            Assert.Equal($"{Canvas.Number(width)}mm", sheet.Root.Attribute("width")!.Value);
            Assert.Equal([0, 0, width, height], sheet.ViewBox);
            double[] points = ParsedDrawing.Numbers(sheet.Fabric.Elements().Single().Attribute("points")!.Value);
            Assert.Equal(25 * 25.4, points.Where((_, i) => i % 2 == 0).Max(), 1e-9); // 25 in across
        }
    }

    [Fact]
    public void Neighbouring_sheets_continue_each_other()
    {
        ParsedDrawing[] sheets = [.. TruePattern.Sheets(Round, Units.In, Paper.A4).Select(svg => new ParsedDrawing(svg))];
        ParsedDrawing first = sheets.Single(sheet => Place(sheet) == (0, 0));
        ParsedDrawing right = sheets.Single(sheet => Place(sheet) == (0, 1));
        ParsedDrawing below = sheets.Single(sheet => Place(sheet) == (1, 0));
        Assert.Equal(Paper.A4.Width - 2 * TileGrid.Margin, first.Matrix[4] - right.Matrix[4], 1e-9);
        Assert.Equal(Paper.A4.Height - 2 * TileGrid.Margin, first.Matrix[5] - below.Matrix[5], 1e-9);
        Assert.Contains(first.All("text"), text => text.Value == "v1.2");
        Assert.Contains(right.All("text"), text => text.Value == "v1.2");
        Assert.All(sheets, sheet => Assert.Equal(4, sheet.All("circle").Count()));
    }

    [Fact]
    public void Sheets_without_a_line_or_mark_are_left_out()
    {
        IReadOnlyList<string> sheets = TruePattern.Sheets(Round, Units.In, Paper.A4);
        Assert.Equal(10, sheets.Count); // 4 × 3 sheets, two of them wholly inside the circle
        PieceAnswer marked = Round with
        {
            Marks =
            [
                new MarkAnswer
                {
                    Kind = Engine.Patterns.Panels.MarkKind.HandleEnd,
                    X = 12,
                    Y = 12,
                    Because = "inside",
                },
            ],
        };
        Assert.Equal(11, TruePattern.Sheets(marked, Units.In, Paper.A4).Count);
    }

    [Fact]
    public void The_document_holds_a_page_for_each_sheet()
    {
        string html = PatternDocument.Write(Round, Units.In, Paper.A4);
        Assert.Equal(10, html.Split("<svg ").Length - 1);
        Assert.Contains("size: A4; margin: 0;", html, StringComparison.Ordinal);
    }

    private static (double Row, double Column) Place(ParsedDrawing sheet) =>
        (ParsedDrawing.Number(sheet.Root, "data-row"), ParsedDrawing.Number(sheet.Root, "data-column"));
}
