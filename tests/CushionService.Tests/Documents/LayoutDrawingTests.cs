using System.Text;
using System.Xml.Linq;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Documents.Drawings;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Json;
using CushionService.Tests.Orders;

namespace CushionService.Tests.Documents;

public sealed class LayoutDrawingTests
{
    private const int Layouts = 200;

    private static IEnumerable<(LayoutsAnswer Answer, LayoutAnswer Layout)> Generated =>
        Enumerable.Range(0, Layouts).Select(RandomLayouts.Of).Select(answer => (answer, answer.Layouts[0]));

    [Fact]
    public void Every_placement_is_drawn_once_at_the_coordinates_of_the_answer()
    {
        foreach ((LayoutsAnswer answer, LayoutAnswer layout) in Generated)
        {
            AssertDrawn(answer, layout);
        }
    }

    [Fact]
    public void Every_placement_of_a_generated_order_is_drawn_at_the_coordinates_of_the_answer()
    {
        int drawn = 0;
        for (int number = 0; drawn < Layouts; number++)
        {
            Order order = OrderText.Parse(Encoding.UTF8.GetBytes(OrderGenerator.Sound(number).ToJsonString())).Order!;
            if (new OrderDesk().Handle(new(order, []), Purposes.Layout, CancellationToken.None).Answer is { } answer)
            {
                drawn++;
                Assert.All(answer.Layouts, layout => AssertDrawn(answer, layout));
            }
        }
    }

    [Fact]
    public void No_piece_is_mirrored_and_all_lie_inside_the_page()
    {
        foreach ((LayoutsAnswer answer, LayoutAnswer layout) in Generated)
        {
            var drawing = new ParsedDrawing(LayoutDrawing.Draw(layout, answer.Pieces, answer.Units));
            double[] m = drawing.Matrix;
            Assert.Equal(-1, m[0] * m[3] - m[1] * m[2]); // y runs up the fabric and down the page: one flip, and no other
            double[] page = drawing.ViewBox;
            foreach (double[] seen in drawing.PieceGroups.Select(drawing.Seen))
            {
                Assert.True(seen[0] >= 0 && seen[1] >= 0 && seen[2] <= page[2] && seen[3] <= page[3]);
            }
        }
    }

    [Fact]
    public void Labels_stay_inside_their_piece_by_the_estimate_of_their_width()
    {
        int labels = 0;
        foreach ((LayoutsAnswer answer, LayoutAnswer layout) in Generated)
        {
            var drawing = new ParsedDrawing(LayoutDrawing.Draw(layout, answer.Pieces, answer.Units));
            Dictionary<(string, string), double[]> pieces = drawing.PieceGroups.ToDictionary(
                group => (group.Attribute("data-piece")!.Value, group.Attribute("data-copy")!.Value),
                drawing.Seen
            );
            foreach (XElement text in drawing.All("text").Where(text => text.Parent!.Attribute("data-label") is not null))
            {
                double[] piece = pieces[(text.Parent!.Attribute("data-label")!.Value, text.Parent.Attribute("data-copy")!.Value)];
                Box label = TextBoxes.Of(text);
                double slack = 0.001 * drawing.Mm;
                Assert.True(label.X >= piece[0] - slack && label.Right <= piece[2] + slack, text.ToString());
                Assert.True(label.Y >= piece[1] - slack && label.Bottom <= piece[3] + slack, text.ToString());
                labels++;
            }
        }

        Assert.True(labels > Layouts);
    }

    [Fact]
    public void All_text_stays_on_the_page_by_the_estimate_of_its_width()
    {
        foreach ((LayoutsAnswer answer, LayoutAnswer layout) in Generated)
        {
            var drawing = new ParsedDrawing(LayoutDrawing.Draw(layout, answer.Pieces, answer.Units));
            double[] page = drawing.ViewBox;
            foreach (XElement text in drawing.All("text"))
            {
                Box box = TextBoxes.Of(text);
                Assert.True(box.X >= -0.001 && box.Y >= 0 && box.Right <= page[2] && box.Bottom <= page[3], text.ToString());
            }
        }
    }

    [Fact]
    public void A_piece_without_its_name_is_in_the_legend()
    {
        QuoteAnswer nook = Scenarios.Nook();
        LayoutAnswer plain = nook.Layouts[1];
        string[] texts = [.. new ParsedDrawing(LayoutDrawing.Draw(plain, nook.Pieces, nook.Units)).All("text").Select(text => text.Value)];
        Assert.Equal(4, texts.Count(text => text == "14"));
        Assert.Single(texts, text => text.StartsWith("14: tab, 2 × 1\u00A01/4\u00A0in", StringComparison.Ordinal));
    }

    [Fact]
    public void Parts_of_a_long_layout_show_every_placement_and_cut_between_pieces_where_they_can()
    {
        QuoteAnswer terrace = Scenarios.Terrace();
        LayoutAnswer layout = terrace.Layouts[0];
        LayoutScale scale = LayoutScale.For(layout);
        IReadOnlyList<Band> bands = scale.Bands(layout);
        Assert.True(bands.Count > 1);
        Assert.Equal(0, bands[0].From);
        Assert.Equal(layout.Length, bands[^1].To);
        Assert.All(bands.Zip(bands.Skip(1)), pair => Assert.Equal(pair.First.To, pair.Second.From));
        Assert.All(layout.Placements, placement => Assert.Single(bands, band => band.Shows(placement)));
    }

    [Fact]
    public void The_ruler_is_labelled_in_the_unit_of_sale()
    {
        QuoteAnswer nook = Scenarios.Nook();
        string yards = LayoutDrawing.Draw(nook.Layouts[0], nook.Pieces, nook.Units, nook.Yardage[0]);
        Assert.Contains(">1\u00A01/8\u00A0yd<", yards.Replace(' ', '\u00A0'), StringComparison.Ordinal);
        QuoteAnswer pillow = Scenarios.Pillow();
        Assert.Contains(
            ">0.1 m<",
            LayoutDrawing.Draw(pillow.Layouts[0], pillow.Pieces, pillow.Units, pillow.Yardage[0]),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_half_drop_lattice_steps_every_other_column()
    {
        QuoteAnswer nook = Scenarios.Nook();
        var scene = new LayoutScene
        {
            Layout = nook.Layouts[0],
            Pieces = new NumberedPieces(nook.Pieces),
            Units = nook.Units,
            Lattice = new MotifLattice(10, 53, DropKind.Half),
        };
        Assert.Contains("repeat of the motif", LayoutDrawing.Draw(scene), StringComparison.Ordinal);
        double centre = nook.Layouts[0].Width / 2;
        int straight = Lines(new MotifLattice(10, 26.5, DropKind.Straight, centre));
        int half = Lines(new MotifLattice(10, 26.5, DropKind.Half, centre));
        Assert.Equal(straight - 2, half); // rows at 5, 15, … 45 instead of 0, 10, … 50 in the two outer columns

        int Lines(MotifLattice lattice) => new ParsedDrawing(LayoutDrawing.Draw(scene with { Lattice = lattice })).All("line").Count();
    }

    [Fact]
    public void A_placement_of_an_unlisted_piece_is_our_own_fault_and_named()
    {
        QuoteAnswer pillow = Scenarios.Pillow();
        var thrown = Assert.Throws<InvalidOperationException>(() => LayoutDrawing.Draw(pillow.Layouts[0], [], pillow.Units));
        Assert.Contains("pillow/front", thrown.Message, StringComparison.Ordinal);
    }

    private static void AssertDrawn(LayoutsAnswer answer, LayoutAnswer layout)
    {
        List<XElement> groups = [.. new ParsedDrawing(LayoutDrawing.Draw(layout, answer.Pieces, answer.Units)).PieceGroups];
        Assert.Equal(layout.Placements.Count, groups.Count);
        foreach ((PlacementAnswer placement, XElement group) in layout.Placements.Zip(groups))
        {
            Assert.Equal(placement.Piece, group.Attribute("data-piece")!.Value);
            Assert.Equal(placement.Copy, ParsedDrawing.Number(group, "data-copy"));
            AssertShape(answer.Pieces.Single(piece => piece.Id == placement.Piece), placement, group.Elements().Single());
        }
    }

    private static void AssertShape(PieceAnswer piece, PlacementAnswer placement, XElement shape)
    {
        if (piece.Points is null)
        {
            Assert.Equal(
                [placement.X, placement.Y, placement.Width, placement.Length],
                new[] { "x", "y", "width", "height" }.Select(name => ParsedDrawing.Number(shape, name))
            );
            return;
        }

        // An independent turn: by the matrix of the angle about the origin, then moved until the lower left corner is the placement's.
        double[] drawn = ParsedDrawing.Numbers(shape.Attribute("points")!.Value);
        (double sin, double cos) = Math.SinCos(placement.Rotation * Math.PI / 180);
        (double X, double Y)[] turned = [.. piece.Points.Select(point => (cos * point.X - sin * point.Y, sin * point.X + cos * point.Y))];
        (double left, double low) = (turned.Min(point => point.X), turned.Min(point => point.Y));
        for (int i = 0; i < turned.Length; i++)
        {
            Assert.Equal(turned[i].X - left + placement.X, drawn[2 * i], 1e-6);
            Assert.Equal(turned[i].Y - low + placement.Y, drawn[2 * i + 1], 1e-6);
        }
    }
}
