using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Specifications.Trimmings;
using static CushionService.Engine.Tests.Patterns.TrimmedCushion;

namespace CushionService.Engine.Tests.Patterns;

/// <summary>Tufts: how many a grid has, where they lie, what they take up of a face, and their buttons and twine.</summary>
public sealed class TuftFacts
{
    [Theory]
    [InlineData(TuftGrid.Diamond, 3, 4, 18, Sources.Mathematics)]
    [InlineData(TuftGrid.Square, 3, 4, 12, Sources.Mathematics)]
    [InlineData(TuftGrid.Diamond, 1, 5, 5, Sources.Mathematics)]
    public void A_diamond_has_a_tuft_between_each_four(TuftGrid grid, int rows, int columns, int count, string source)
    {
        var tufts = new TuftSpecification(rows, columns, grid, In(0.875m), false, Length.Zero);
        Drafting cushion = Draft(Boxed(24, 18, 4, HandSewn), new TrimSpecification { Tufts = tufts });

        Assert.Equal(count, tufts.Count);
        Assert.Equal(count, tufts.On(In(24), In(18)).Distinct().Count());
        Assert.Equal(count, cushion.Patterns[0].Panel("top").Marks.Count(mark => mark.Kind == MarkKind.Tuft));
        Assert.Equal(count, cushion.Patterns[0].Panel("bottom").Marks.Count(mark => mark.Kind == MarkKind.Tuft));
    }

    [Fact]
    public void A_pulled_tuft_takes_up_the_two_slopes_beyond_its_interval()
    {
        // Sources.Mathematics: i = 6, q = 4 is the 3-4-5 triangle twice: 2 (5 − 3) = 4 in.
        Assert.Equal(In(4), TuftSpecification.TakeUp(In(6), In(4)));

        CutPiece top = Piece(
            "top",
            Boxed(24, 18, 9, HandSewn),
            new TrimSpecification { Tufts = new TuftSpecification(3, 4, TuftGrid.Square, In(0.875m), false, In(4)) }
        );
        Assert.Equal(In(24 + (4 * 4) + 1), top.Width);
        Assert.Equal(In(18 + (3 * 4) + 1), top.Length);
        Assert.Contains("16 in drawn in by stitching", Derivation.Of(top).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Shallow_tufts_leave_the_face_as_it_is() =>
        // Sources.Practice: face allowance 0 for shallow tufting.
        Assert.Equal(
            In(25),
            Piece(
                "top",
                Boxed(24, 18, 4, HandSewn),
                new TrimSpecification { Tufts = new TuftSpecification(3, 4, TuftGrid.Square, In(0.875m), false, Length.Zero) }
            ).Width
        );

    [Fact]
    public void Tufts_take_two_buttons_and_twice_the_thickness_and_12_inches_of_twine_each()
    {
        // Sources.Practice: 18 tufts on 4 in: 36 buttons, 18 × 20 = 360 in = 10 yd.
        Quote quote = Quoted(
            Boxed(24, 18, 4, HandSewn),
            new TrimSpecification { Tufts = new TuftSpecification(3, 4, TuftGrid.Diamond, In(0.875m), true, Length.Zero) }
        );

        Assert.Equal(36, Bought(quote, MaterialKind.Button).Quantity);
        Assert.Equal(10, Bought(quote, MaterialKind.Twine).Quantity);
        CutPiece cover = quote.Drafting.Pieces.Single(piece => piece.Part.ToString() == "button-cover");
        Assert.Equal((36, In(1.75m)), (cover.Quantity, cover.Width));
        Assert.Contains(quote.Cautions, caution => caution.Code == "buttons");
    }

    [Fact]
    public void The_twine_of_a_cover_without_a_boxing_goes_through_what_it_fills_out_to()
    {
        // Sources.Mathematics: two discs of 16 in fill out to 0.457 × 16 = 7.31 in at most (Paulsen 1994), on a tape 7 5/16; twice that and
        // 12 in are 26 5/8 in, 3/4 yd, where 12 in alone would be 3/8.
        Quote quote = Quoted(
            KnifeEdge(16, 16, HandSewn),
            new TrimSpecification { Tufts = new TuftSpecification(1, 1, TuftGrid.Square, In(0.875m), false, Length.Zero) }
        );

        Assert.Equal(0.75m, Bought(quote, MaterialKind.Twine).Quantity);
    }

    [Theory]
    [InlineData(4, 4, TuftGrid.Square, 12)] // corners of the grid are √2 × 7.5 = 10.61 in from the middle, past 10 − 0.875
    [InlineData(2, 2, TuftGrid.Square, 4)] // √2 × 5 = 7.07
    [InlineData(3, 3, TuftGrid.Diamond, 9)] // corners √2 × 6.67 = 9.43 out; 5 of the square and 4 between
    public void Tufts_on_a_circle_are_those_within_it(int rows, int columns, TuftGrid grid, int count)
    {
        // Sources.Mathematics: a circle of 20 in.
        var circle = new CircleOutline(In(20));
        var tufts = new TuftSpecification(rows, columns, grid, In(0.875m), false, Length.Zero) { Within = circle };

        Assert.Equal(count, tufts.Count);
        Assert.All(tufts.On(In(20), In(20)), point => Assert.True(FromMiddle(point) <= 9.125, $"{point}"));

        static double FromMiddle(Geometry.Point point) =>
            Math.Sqrt(Math.Pow((point.X - In(10)).Nanometres, 2) + Math.Pow((point.Y - In(10)).Nanometres, 2)) / In(1).Nanometres;
    }

    [Fact]
    public void Tufts_on_an_ell_leave_out_the_corner_that_it_lacks()
    {
        // Sources.Mathematics: of 4 × 4 tufts on 40 in, 10 in apart, an ell without 20 × 20 in lacks 4.
        var ell = new EllOutline(In(40), In(40), In(20), In(20), Side.Right);

        Assert.Equal(12, (new TuftSpecification(4, 4, TuftGrid.Square, In(1), false, Length.Zero) { Within = ell }).Count);
    }
}
