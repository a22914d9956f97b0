using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Cutting;

public sealed class PieceMarksFacts
{
    // Sources.Practice
    private static readonly HandleSpecification PractisedStrap = new(HandleKind.FoldedStrap, Side.Front, In(1), In(9), In(8.5m));

    [Fact]
    public void The_ends_of_a_strap_of_span_8_1_2_stand_4_3_4_from_each_end_of_a_strip_of_18()
    {
        // Sources.Practice
        CutPiece front = Piece(Boxed(17, 15, 2, HookAndLoop(0.5m, 1)) with { Handle = PractisedStrap }, "front");
        PieceMark[] ends = [.. PieceMarks.Of(front).Where(mark => mark.Kind == MarkKind.HandleEnd)];

        Assert.Equal([In(4.75m), front.Width - In(4.75m)], ends.Select(mark => mark.From.X));
        Assert.Equal([In(8.5m)], [ends[1].From.X - ends[0].From.X]);
        Assert.All(ends, mark => Assert.Equal((In(1), In(2)), (mark.From.Y, mark.To!.Value.Y)));
        Assert.Contains("4 3/4 in from the left end", ends[0].Because.ToString(), StringComparison.Ordinal);
        Assert.Contains("4 3/4 in from the right end", ends[1].Because.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Side.Front, "front")]
    [InlineData(Side.Left, "left")]
    [InlineData(Side.Right, "right")]
    public void A_strap_is_centred_on_its_side(Side side, string part)
    {
        CutPiece strip = Piece(Boxed(22, 20, 3, HookAndLoop(0.5m, 1.25m)) with { Handle = Strap with { Side = side } }, part);
        PieceMark[] ends = [.. PieceMarks.Of(strip).Where(mark => mark.Kind == MarkKind.HandleEnd)];

        Assert.Equal(2, ends.Length);
        Assert.Equal(strip.Width, ends[0].From.X + ends[1].From.X);
    }

    [Fact]
    public void A_strap_is_folded_at_the_quarters_and_turned_in_half_an_inch_at_each_end()
    {
        // Sources.Practice: 4 × 10 in of fabric makes a strap of 1 × 9 in.
        CutPiece strap = Piece(Boxed(17, 15, 2, HookAndLoop(0.5m, 1)) with { Handle = PractisedStrap }, "handle");
        PieceMark[] folds = [.. PieceMarks.Of(strap).Where(mark => mark.Kind == MarkKind.FoldLine)];

        Assert.Equal((In(4), In(10)), (strap.Width, strap.Length));
        Assert.Equal([In(1), In(2), In(3)], folds.Where(mark => mark.From.X == mark.To!.Value.X).Select(mark => mark.From.X));
        Assert.Equal([In(0.5m), In(9.5m)], folds.Where(mark => mark.From.Y == mark.To!.Value.Y).Select(mark => mark.From.Y).Order());
        Assert.Equal("4 layers of 1 in by 9 in + 2 × 1/2 in turn-in", Derivation.Of(strap).ToString());
    }

    [Fact]
    public void A_double_hem_has_two_fold_lines_on_its_own_edge()
    {
        CutPiece upper = Piece(Boxed(22, 20, 4, HookAndLoop(0.5m, 1)), "closure-upper"),
            lower = Piece(Boxed(22, 20, 4, HookAndLoop(0.5m, 1)), "closure-lower");

        Assert.Equal([In(0.5m), In(1)], Folds(upper));
        Assert.Equal([In(3), In(3.5m)], Folds(lower));

        static IEnumerable<Length> Folds(CutPiece piece) =>
            PieceMarks.Of(piece).Where(mark => mark.Kind == MarkKind.FoldLine).Select(mark => mark.From.Y).Order();
    }

    [Fact]
    public void Every_notch_stands_on_the_cut_edge_and_every_mark_within_the_piece()
    {
        foreach (CutPiece piece in Drafting.Of(Order(Boxed(60, 22, 4, BackZipper, BoxingJoins.Back))).Pieces)
        {
            foreach (PieceMark mark in PieceMarks.Of(piece))
            {
                Assert.InRange(mark.From.X.Nanometres, 0, piece.Width.Nanometres);
                Assert.InRange(mark.From.Y.Nanometres, 0, piece.Length.Nanometres);
                Assert.True(
                    mark.Kind != MarkKind.Notch
                        || mark.From.X == Length.Zero
                        || mark.From.X == piece.Width
                        || mark.From.Y == Length.Zero
                        || mark.From.Y == piece.Length,
                    mark.Because.ToString()
                );
            }
        }
    }

    [Fact]
    public void Notches_that_are_sewn_together_stand_at_the_same_distance_from_the_corner()
    {
        // The middle of the front, on the face and on the strip.
        CushionSpecification cushion = Boxed(22, 20, 3, HookAndLoop(0.5m, 1.25m));
        Length onFace = Middle(Piece(cushion, "top"), "middle of front;"),
            onStrip = Middle(Piece(cushion, "front"), "middle of front-top;");

        Assert.Equal(In(11.5m), onFace);
        Assert.Equal(onFace, onStrip);

        static Length Middle(CutPiece piece, string which) =>
            PieceMarks.Of(piece).Single(mark => mark.Because.ToString().Contains(which, StringComparison.Ordinal)).From.X;
    }

    [Fact]
    public void The_arrow_on_the_side_of_a_pointed_wedge_lies_on_the_fabric()
    {
        // Sources.Mathematics: 20 in deep and 6 high, the slope is 0.3 and 1/2 in out from it 0.522 higher; the side's point is cut off a
        // seam allowance twice out. In the middle of the cut width the piece is 3.94 in high, and the arrow has a quarter of that, in the
        // middle: it ends at 2.46, where the middle of the whole, 7 in high, would be 4.48.
        CutPiece side = Piece(Boxed(24, 20, 6, BackZipper) with { Construction = Construction.Wedge }, "right") with
        {
            Rotations = Nesting.Rotations.None,
        };
        PieceMark arrow = PieceMarks.Of(side).Single(mark => mark.Kind == MarkKind.UpArrow);

        Assert.Equal(
            (1.48m, 2.46m),
            (decimal.Round(arrow.From.Y.In(LengthUnit.Inch), 2), decimal.Round(arrow.To!.Value.Y.In(LengthUnit.Inch), 2))
        );
    }

    private static CutPiece Piece(CushionSpecification cushion, string part) =>
        Drafting.Of(Order(cushion)).Pieces.Single(piece => piece.Part.ToString() == part);

    // A corner that is drawn in over a quarter of a long side is marked across the joins of a face (Sources.Mathematics: the height of
    // the line at a join is its share of the run).
    [Fact]
    public void A_slanted_line_that_crosses_a_join_is_marked_on_both_panels()
    {
        var line = new PanelMark(MarkKind.TaperLine, new Point(In(20), In(0)), new Point(In(4), In(2)), MarkPurpose.TaperCorner);

        Assert.Equal((new Point(In(10), In(1.25m)), new Point(In(4), In(2))), Ends(line.Within(In(0), In(10))));
        Assert.Equal((new Point(In(20), In(0)), new Point(In(10), In(1.25m))), Ends(line.Within(In(10), In(30))));
        Assert.True(line.IsWithin(In(0), In(10)));
        Assert.True(line.IsWithin(In(10), In(30)));
        Assert.False(line.IsWithin(In(20), In(30)));

        static (Point, Point) Ends(PanelMark mark) => (mark.From, mark.To!.Value);
    }
}
