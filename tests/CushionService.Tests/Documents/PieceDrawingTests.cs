using System.Xml.Linq;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;

namespace CushionService.Tests.Documents;

public sealed class PieceDrawingTests
{
    [Fact]
    public void The_cut_line_is_the_outline_of_the_answer()
    {
        foreach (PieceAnswer piece in Scenarios.Nook().Pieces)
        {
            var drawing = new ParsedDrawing(PieceDrawing.Draw(piece, Units.In));
            double[] drawn = ParsedDrawing.Numbers(drawing.Fabric.Elements().Single().Attribute("points")!.Value);
            double[] expected = piece.Points is { } points
                ? [.. points.SelectMany(point => new[] { point.X, point.Y })]
                : [0, 0, piece.Width, 0, piece.Width, piece.Length, 0, piece.Length];
            Assert.Equal(expected, drawn);
        }
    }

    [Fact]
    public void Every_mark_has_a_letter_and_a_line_of_words()
    {
        foreach (PieceAnswer piece in Scenarios.Nook().Pieces)
        {
            string[] texts = [.. new ParsedDrawing(PieceDrawing.Draw(piece, Units.In)).All("text").Select(text => text.Value)];
            for (int i = 0; i < piece.Marks.Count; i++)
            {
                string letter = MarkWords.Letter(i);
                Assert.Single(texts, text => text == letter);
                Assert.Single(texts, text => text.StartsWith($"{letter}: ", StringComparison.Ordinal));
            }
        }
    }

    [Fact]
    public void No_text_covers_another_or_leaves_the_page()
    {
        foreach (PieceAnswer piece in Scenarios.All.SelectMany(scenario => scenario.Quote.Pieces))
        {
            var drawing = new ParsedDrawing(PieceDrawing.Draw(piece, Units.In));
            List<Box> boxes = [.. drawing.All("text").Select(TextBoxes.Of).Select(box => box.Inset(0.05 * box.Height))];
            var page = new Box(0, 0, drawing.ViewBox[2], drawing.ViewBox[3]);
            Assert.All(boxes, box => Assert.True(page.Holds(box), $"{piece.Id}: {box} on {page}"));
            for (int i = 0; i < boxes.Count; i++)
            {
                Assert.DoesNotContain(boxes.Skip(i + 1), boxes[i].Overlaps);
            }
        }
    }

    [Fact]
    public void A_notch_points_into_the_piece()
    {
        PieceAnswer round = Scenarios.Nook().Pieces[8];
        var drawing = new ParsedDrawing(PieceDrawing.Draw(round, Units.In));
        double[] m = drawing.Matrix;
        (double x, double y) = (m[0] * 12.5 + m[4], m[3] * 12.5 + m[5]);
        XElement[] notches = [.. drawing.All("polygon").Where(polygon => polygon.Attribute("fill") is not null)];
        Assert.Equal(4, notches.Length);
        foreach (double[] p in notches.Select(notch => ParsedDrawing.Numbers(notch.Attribute("points")!.Value)))
        {
            double root = Distance((p[0] + p[2]) / 2, (p[1] + p[3]) / 2);
            Assert.Equal(12.5, root, 1e-3);
            Assert.True(Distance(p[4], p[5]) < root);
        }

        double Distance(double px, double py) => Math.Sqrt((px - x) * (px - x) + (py - y) * (py - y));
    }
}
