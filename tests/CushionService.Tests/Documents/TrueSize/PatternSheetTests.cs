using System.Globalization;
using System.Net;
using System.Text;
using CushionService.Contract;
using CushionService.Documents;
using CushionService.Documents.Drawings;
using CushionService.Documents.TrueSize;
using CushionService.Tests.Hosting;
using CushionService.Tests.Orders;

namespace CushionService.Tests.Documents.TrueSize;

public sealed class PatternSheetTests(RunningService service) : IClassFixture<RunningService>
{
    private static readonly PatternPiece Round = Drafted.Pieces(Drafted.Order(Drafted.Disc))[0];

    [Fact]
    public void The_register_marks_of_neighbouring_sheets_lie_on_each_other()
    {
        Dictionary<(int Row, int Column), HashSet<(double, double)>> crosses = [];
        foreach (PatternSheet sheet in PatternSheets.Of([Round], Paper.A4))
        {
            var drawing = new ParsedDrawing(PatternDrawing.Draw(sheet, 9, new OrderUnits(Units.Mm)));
            Spot corner = sheet.Parts[0].View.Corner;
            Tile tile = sheet.Parts[0].Tile!;
            // As places of the whole piece.
            crosses[(tile.Row, tile.Column)] =
            [
                .. drawing
                    .All("circle")
                    .Select(ring =>
                        (
                            Math.Round(ParsedDrawing.Number(ring, "cx") - corner.X, 3),
                            Math.Round(ParsedDrawing.Number(ring, "cy") - corner.Y, 3)
                        )
                    ),
            ];
        }

        foreach (((int row, int column), HashSet<(double, double)> here) in crosses)
        {
            Assert.Equal(4, here.Count);
            foreach ((int, int) next in ((int, int)[])[(row, column + 1), (row + 1, column)])
            {
                if (crosses.TryGetValue(next, out HashSet<(double, double)>? there))
                {
                    Assert.Equal(2, here.Intersect(there).Count());
                }
            }
        }
    }

    [Fact]
    public void Each_joint_is_named_on_both_of_its_sheets_and_no_others()
    {
        string[] names =
        [
            .. PatternSheets
                .Of([Round], Paper.A4)
                .SelectMany(sheet => new ParsedDrawing(PatternDrawing.Draw(sheet, 9, new OrderUnits(Units.Mm))).All("text"))
                .Select(text => text.Value)
                .Where(text => text.StartsWith("1-", StringComparison.Ordinal)),
        ];
        Assert.NotEmpty(names);
        Assert.All(names.GroupBy(name => name), group => Assert.Equal(2, group.Count()));
    }

    [Fact]
    public void Sheets_without_a_line_or_mark_are_left_out()
    {
        PatternPiece large = Drafted
            .Pieces(Drafted.Order(Drafted.Disc.Replace("410", "1100", StringComparison.Ordinal)))
            .First(piece => !piece.IsRectangle);
        IReadOnlyList<PatternSheet> sheets = PatternSheets.Of([large], Paper.A4);
        TileGrid grid = sheets[0].Parts[0].Tile!.Grid;
        Assert.True(sheets.Count < grid.Rows * grid.Columns);
        Assert.All(
            sheets,
            sheet => Assert.Contains(large.Strokes(sheet.Parts[0].View), line => Outline.Enters(line.From, line.To, Net(sheet)))
        );
    }

    private static Box Net(PatternSheet sheet) => new Box(0, 0, sheet.Size.X, sheet.Size.Y).Inset(TileGrid.Margin);

    [Fact]
    public void Small_pieces_share_a_sheet_without_touching_and_a_roll_ends_where_they_do()
    {
        foreach (Paper paper in (Paper[])[Paper.A3, Paper.Named("roll-914mm")!])
        {
            IReadOnlyList<PatternPiece> pieces = Drafted.Pieces(
                Drafted.Order(
                    """
                    "construction": "pouf", "outline": { "kind": "circle", "diameter": 300 }, "thickness": 200, "gores": 8,
                    "closure": { "kind": "zipper" }
                    """
                )
            );
            foreach (PatternSheet sheet in PatternSheets.Of(pieces, paper))
            {
                Box[] boxes = [.. sheet.Parts.Where(part => part.Tile is null).Select(part => part.View.Frame)];
                Assert.All(boxes, box => Assert.True(Net(sheet).Holds(box)));
                Assert.DoesNotContain(boxes, one => boxes.Count(one.Overlaps) > 1);
                Assert.True(!paper.IsRoll || sheet.Size.Y < boxes.Max(box => box.Bottom) + TileGrid.Margin + 2);
            }
        }
    }

    [Theory]
    [InlineData("a4", 210, 297)]
    [InlineData("a3", 297, 420)]
    [InlineData("letter", 215.9, 279.4)]
    [InlineData("tabloid", 279.4, 431.8)]
    [InlineData("roll-36in", 914.4, 5000)]
    [InlineData("roll-914mm", 914, 5000)]
    public void Paper_has_its_standard_size(string name, double width, double height) =>
        Assert.Equal((width, height), (Paper.Named(name)!.Width, Paper.Named(name)!.Height));

    [Theory]
    [InlineData("A4")]
    [InlineData("roll-")]
    [InlineData("roll-in")]
    [InlineData("roll-0in")]
    [InlineData("roll-99in")]
    [InlineData("roll-9999999999mm")]
    [InlineData("roll--36in")]
    [InlineData("")]
    public void Other_paper_is_unknown(string name) => Assert.Null(Paper.Named(name));

    [Fact]
    public void The_same_order_gives_the_same_bytes()
    {
        byte[] Write() => PatternDocument.Write("seat", [Round], Paper.A4, new OrderUnits(Units.Mm), true, CancellationToken.None).Bytes;
        byte[] first = Write();
        Assert.Equal(first, Write());
        Parallel.For(0, 4, _ => Assert.Equal(first, Write()));
    }

    [Fact]
    public void A_curve_departs_from_its_arc_by_less_than_a_hundredth_of_a_millimetre()
    {
        string path = CurvePath.Of(Round.Lines.Cut);
        double[] numbers = ParsedDrawing.Numbers(new string([.. path.Select(sign => sign is 'M' or 'C' or 'L' or 'Z' ? ' ' : sign)]));
        for (int i = 2; i + 5 < numbers.Length; i += 6)
        {
            // The middle of a cubic Bézier curve: (p + 3 q + 3 r + s) / 8.
            double Middle(int axis) =>
                (numbers[i - 2 + axis] + 3 * numbers[i + axis] + 3 * numbers[i + 2 + axis] + numbers[i + 4 + axis]) / 8;
            Assert.Equal(217, double.Hypot(Middle(0) - 217, Middle(1) - 217), 0.01);
        }
    }

    [Fact]
    public void Curved_cut_lines_enclose_what_the_corners_of_the_answer_do()
    {
        foreach ((string name, string cushion) in ConstructionOrders.All)
        {
            foreach (PatternPiece piece in Drafted.Pieces(ConstructionOrders.Of(cushion).ToJsonString()).Where(piece => !piece.IsRectangle))
            {
                double length = piece.Lines.Cut.Sum(line => line.Length.Nanometres / 1e6);
                double area = Area([
                    .. piece.Lines.Cut.SelectMany(line => Enumerable.Range(0, 64).Select(i => line.At(i / 64.0))).Select(At),
                ]);
                double corners = Area([.. piece.Drawn.Points!.Select(point => new Spot(point.X, point.Y))]);
                Assert.True(
                    Math.Abs(corners - area) < 0.4 * length,
                    string.Create(CultureInfo.InvariantCulture, $"{name} {piece.Answer.Id}: {area}, {corners}")
                );
            }
        }

        static Spot At(Engine.Geometry.Point point) => new(point.X.Nanometres / 1e6, point.Y.Nanometres / 1e6);
    }

    private static double Area(Spot[] corners) =>
        corners
            .Select((at, i) => (at, next: corners[(i + 1) % corners.Length]))
            .Sum(edge => edge.at.X * edge.next.Y - edge.next.X * edge.at.Y) / 2;

    [Fact]
    public async Task More_sheets_than_a_document_may_have_are_refused()
    {
        string pieces = string.Join(
            ',',
            Enumerable.Range(0, 40).Select(i => $$"""{ "id": "p{{i}}", "fabric": "main", "points": [[0,0],[{{1300 + i}},0],[0,3000]] }""")
        );
        string order = $$"""
            { "units": "mm", "pieces": [{{pieces}}],
              "fabrics": [{ "id": "main", "width": 1400, "sold": { "unit": "m", "step": 0.1 } }] }
            """;
        using HttpRequestMessage request = new(HttpMethod.Post, "/v1/pieces?paper=a4")
        {
            Content = new StringContent(order, Encoding.UTF8, "application/json"),
        };
        request.Headers.Add("Accept", "application/pdf");
        using HttpResponseMessage response = await service.Http.SendAsync(request);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, response.StatusCode);
        Assert.Equal([" too-many-sheets"], (await response.ProblemAsync()).Violations());
    }
}
