using CushionService.Contract;
using CushionService.Documents;
using CushionService.Documents.Drawings;
using CushionService.Documents.TrueSize;
using CushionService.Engine.Geometry;

namespace CushionService.Tests.Documents.TrueSize;

/// <summary>Patterns measured on the page, as an independent reader of PDF shows it.</summary>
public sealed class PatternSizeTests
{
    private const int Dots = 300;
    private const double Allowed = 0.2;

    public static TheoryData<string, string> Cushions()
    {
        var cushions = new TheoryData<string, string>();
        string[] outlines =
        [
            Drafted.Disc,
            Zipped("boxed", """ "kind": "oval", "width": 500, "depth": 380 """),
            Zipped("boxed", """ "kind": "tee", "width": 610, "depth": 560, "earWidth": 55, "earDepth": 120 """),
            Zipped("gathered-corner", """ "kind": "rectangle", "width": 450, "depth": 400 """),
        ];
        foreach (string paper in (string[])["a4", "letter", "roll-36in"])
        {
            foreach (string outline in outlines)
            {
                cushions.Add(outline, paper);
            }
        }

        return cushions;
    }

    private static string Zipped(string construction, string outline) =>
        $$""" "construction": "{{construction}}", "outline": { {{outline}} }, "thickness": 60, "closure": { "kind": "zipper" } """;

    [SkippableTheory]
    [MemberData(nameof(Cushions))]
    public void The_cut_line_is_where_it_should_be_to_a_fifth_of_a_millimetre(string cushion, string paperName)
    {
        Poppler.IsNeeded();

        Paper paper = Paper.Named(paperName)!;
        PatternPiece[] piece = [Drafted.Pieces(Drafted.Order(cushion)).First(one => !one.IsRectangle)];
        byte[] pdf = PatternDocument.Write("seat", piece, paper, new OrderUnits(Units.Mm), true, CancellationToken.None).Bytes;
        IReadOnlyList<PatternSheet> sheets = PatternSheets.Of(piece, paper);
        int key = PatternKey.Draw("seat", sheets, paper, new OrderUnits(Units.Mm)).Count;
        int measured = 0;
        foreach (PatternSheet sheet in sheets)
        {
            GreyPage page = Poppler.Page(pdf, key + sheet.Number, Dots);
            Assert.Equal(sheet.Size.X / 25.4 * Dots, page.Width, 1.0);
            Assert.Equal(sheet.Size.Y / 25.4 * Dots, page.Height, 1.0);
            measured += Measure(page, sheet);
        }

        Assert.True(measured >= 25, $"Only {measured} points were measured.");
    }

    // Points clear of marks, corners and the frame of the sheet, where nothing but the cut line is within reach.
    private static int Measure(GreyPage page, PatternSheet sheet)
    {
        PatternPart part = sheet.Parts.Single();
        var free = new Box(0, 0, sheet.Size.X, sheet.Size.Y).Inset(TileGrid.Margin + 6);
        Spot[] marks = [.. part.Piece.Drawn.Marks.Select(mark => part.View.At(mark.X, mark.Y))];
        int count = 0;
        foreach (Segment line in part.Piece.Lines.Cut.Where(line => line.Length.Nanometres > 20e6))
        {
            for (double share = 0.15; share < 0.9; share += 0.1)
            {
                Point point = line.At(share);
                Spot spot = part.View.At(point.X.Nanometres / 1e6, point.Y.Nanometres / 1e6);
                bool clear = spot.X > free.X && spot.X < free.Right && spot.Y > free.Y && spot.Y < free.Bottom;
                if (!clear || marks.Any(mark => (mark - spot).Size < 10))
                {
                    continue;
                }

                Point on = line.At(share + 0.001);
                Spot along = (part.View.At(on.X.Nanometres / 1e6, on.Y.Nanometres / 1e6) - spot).Unit();
                double? off = page.Off(spot, along.Turned(), 1.5);
                Assert.True(off is < Allowed and > -Allowed, $"Sheet {sheet.Number}: {off} mm off at {spot.X:0.0}, {spot.Y:0.0}.");
                count++;
            }
        }

        return count;
    }

    [Fact]
    public void A_round_box_of_41_cm_is_cut_on_a_circle_of_434_mm()
    {
        PatternPiece disc = Drafted.Pieces(Drafted.Order(Drafted.Disc))[0];
        Assert.All(
            disc.Lines.Cut.SelectMany(line => Enumerable.Range(0, 50).Select(i => line.At(i / 50.0))),
            point => Assert.Equal(217, double.Hypot(point.X.Nanometres / 1e6 - 217, point.Y.Nanometres / 1e6 - 217), 0.003)
        );
    }

    [SkippableFact]
    public void The_text_of_a_pattern_can_be_searched()
    {
        Poppler.IsNeeded();

        PatternPiece disc = Drafted.Pieces(Drafted.Order(Drafted.Disc))[0];
        PatternPiece named = disc with { Answer = disc.Answer with { Label = "Sitzkissen für Łódź, שלום" } };
        string text = Poppler.Text(
            PatternDocument.Write("seat", [named], Paper.A4, new OrderUnits(Units.Mm), true, CancellationToken.None).Bytes
        );
        Assert.Contains("Sitzkissen für Łódź", text, StringComparison.Ordinal);
        Assert.Contains("cut 1 of main", text, StringComparison.Ordinal);
    }
}
