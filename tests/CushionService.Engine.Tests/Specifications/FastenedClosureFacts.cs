using CushionService.Engine.Cutting;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Tests.Specifications;

/// <summary>Closures held by buttons and ties, and the settings of a workroom. Sources.Practice throughout.</summary>
public sealed class FastenedClosureFacts
{
    private static readonly ButtonClosure Buttons = new(
        Side.Bottom,
        Length.Zero,
        In(0.5m),
        WorkroomPractice.Imperial.Closures.ButtonedOverlap(In(0.75m)),
        In(0.75m)
    );

    [Theory]
    [InlineData(18, 5)]
    [InlineData(12, 3)]
    [InlineData(4, 1)]
    [InlineData(13, 4)]
    public void Buttons_stand_three_to_four_inches_apart(int run, int count)
    {
        Assert.Equal(count, OverlappingClosure.FasteningsOn(In(run), WorkroomPractice.Imperial.Closures.ButtonSpacing));
        Assert.True(run / (double)count is >= 3 and <= 4);
    }

    [Theory]
    // Sources.Practice: a hole of 3 + 3/5 + 1/8 in and 1/4 in at both its ends take 4.225 in of the run.
    [InlineData(3, 5, 1)]
    [InlineData(3, 9, 2)]
    [InlineData(3, 18, 4)]
    // Small buttons keep the usual spacing.
    [InlineData(0.75, 18, 5)]
    [InlineData(1.5, 5, 2)]
    public void Holes_of_large_buttons_stand_clear_of_each_other(double diameter, int run, int count)
    {
        Length button = In((decimal)diameter);
        CushionSpecification pillow = KnifeEdge(
            run,
            16,
            new ButtonClosure(Side.Bottom, Length.Zero, In(0.5m), WorkroomPractice.Imperial.Closures.ButtonedOverlap(button), button)
        );

        Assert.Equal(count, Fastenings.Buttons(Drafting.Of(Order(pillow)).Patterns[0]));
        Assert.True(count == 1 || In(run).Nanometres / count >= WorkroomPractice.Imperial.Closures.RoomForButton(button).Nanometres);
    }

    [Fact]
    public void An_overlap_holds_the_button_and_a_quarter_at_each_edge_and_the_hole_is_a_little_longer()
    {
        Assert.Equal(In(1.25m), Buttons.Overlap);
        Assert.Equal(In(0.75m + 0.15m + 0.125m), WorkroomPractice.Imperial.Closures.Buttonhole(Buttons.Diameter));
    }

    [Fact]
    public void A_buttoned_back_is_two_hemmed_flaps_with_marks_that_meet()
    {
        // Sources.Derived: (18 + 1 1/4)/2 + 1/2 + 1 = 11 1/8, the other as much.
        Quote quote = Quote(Order(KnifeEdge(18, 18, Buttons)));
        CutPiece front = quote.Drafting.Pieces.Single(piece => piece.Part.ToString() == "bottom-front"),
            back = quote.Drafting.Pieces.Single(piece => piece.Part.ToString() == "bottom-back");

        Assert.Equal((In(11.125m), In(11.125m)), (front.Length, back.Length));
        Assert.Equal(5, quote.Materials.Single(material => material.Kind == MaterialKind.Button).Quantity);
        Length[] above = Heights(front),
            below = Heights(back);
        Assert.Equal(5, above.Length);
        Assert.All(above, y => Assert.Equal(front.Panel!.Height - Buttons.Overlap.HalfUp(), y));
        Assert.All(below, y => Assert.Equal(Buttons.Overlap.HalfUp(), y));
        Assert.Contains(quote.Steps, step => step.Text.ToString().Contains("5 buttonholes", StringComparison.Ordinal));
    }

    [Fact]
    public void A_tied_boxing_has_two_ties_at_every_mark_and_cautions()
    {
        var closure = new TieClosure(Side.Back, Length.Zero, In(0.5m), In(1.5m), In(8));
        Quote quote = Quote(Order(Boxed(18, 16, 4, closure)));

        Assert.Equal(6, quote.Drafting.Pieces.Single(piece => piece.Part.ToString() == "closure-tie").Quantity);
        Assert.Contains(quote.Cautions, caution => caution.Code == "ties-and-cords");
    }

    [Fact]
    public void Ties_across_an_underside_that_tapers_meet_where_the_upper_hem_falls()
    {
        // Sources.Derived: from below, 24 in at the front and 14 at the back of 20, 8 in at the left and 2 at the right. Of an overlap of
        // 5 the front flap's hem is at 12 1/2, from 5 to 22 3/4, and the back one's at 7 1/2, from 3 to 23 1/4. Three ties on the shorter
        // one, 17 3/4 long, are in the middle of thirds of it; the back flap begins 3 in from the left. Sources.Practice: both where
        // the upper hem is, that of the back flap.
        CushionSpecification pillow = KnifeEdge(1, 1, new TieClosure(Side.Bottom, Length.Zero, In(0.5m), In(5), In(8))) with
        {
            Outline = new TrapezoidOutline(In(24), In(14), In(20), In(2)),
        };
        Quote quote = Quote(Order(pillow));
        decimal third = 17.75m / 3;
        decimal[] places = [5 + third / 2, 5 + third * 1.5m, 5 + third * 2.5m];

        Assert.Equal(places.Select(x => Place(x, 7.5m)), Ties("bottom-front"));
        Assert.Equal(places.Select(x => Place(x - 3, 0)), Ties("bottom-back"));
        Assert.Contains(
            quote.Steps,
            step =>
                step.Text.ToString()
                    .Contains(
                        "on bottom-front 5 in from the edge of its hem, where the other hem comes to lie; "
                            + "on bottom-back at the edge of its hem",
                        StringComparison.Ordinal
                    )
        );

        IEnumerable<string> Ties(string part) =>
            quote
                .Drafting.Patterns[0]
                .Panels.Single(panel => panel.Part.ToString() == part)
                .Marks.Where(mark => mark.Purpose == MarkPurpose.SewClosureTie)
                .OrderBy(mark => mark.From.X)
                .Select(mark => Place(mark.From.X.In(LengthUnit.Inch), mark.From.Y.In(LengthUnit.Inch)));

        static string Place(decimal x, decimal y) => $"{decimal.Round(x, 4):0.####} {decimal.Round(y, 4):0.####}";
    }

    [Fact]
    public void Buttons_across_a_triangle_are_as_far_apart_as_their_holes()
    {
        // Sources.Derived: a triangle of 24 in, 20.785 deep, is 11.278 wide at the front flap's hem, 11.017 up, and 12.722 at the back
        // flap's, 9.767 up: three on the shorter, 3.759 apart.
        CushionSpecification seat = KnifeEdge(1, 1, Buttons) with
        {
            Outline = new RegularPolygonOutline(3, In(24)),
        };
        Pattern pattern = Drafting.Of(Order(seat)).Patterns[0];

        foreach (string part in (string[])["bottom-front", "bottom-back"])
        {
            decimal[] at =
            [
                .. pattern
                    .Panels.Single(panel => panel.Part.ToString() == part)
                    .Marks.Where(mark => mark.Kind == MarkKind.Button)
                    .Select(mark => mark.From.X.In(LengthUnit.Inch))
                    .Order(),
            ];
            Assert.Equal([3.759m, 3.759m], at.Skip(1).Zip(at, (one, before) => decimal.Round(one - before, 3)));
        }
    }

    [Fact]
    public void The_tie_of_a_lower_strip_stands_clear_of_the_strip_over_it()
    {
        // Sources.Practice: of a boxing of 4 in with an overlap of 1 1/2 the lower strip is 2 3/4 high; the upper one's edge lies 1 1/4 up.
        Pattern pattern = Drafting.Of(Order(Boxed(18, 16, 4, new TieClosure(Side.Back, Length.Zero, In(0.5m), In(1.5m), In(8))))).Patterns[
            0
        ];

        Assert.Equal([In(1.25m)], Heights("closure-lower"));
        Assert.Equal([In(0)], Heights("closure-upper"));

        IEnumerable<Length> Heights(string part) =>
            pattern
                .Panels.Single(panel => panel.Part.ToString() == part)
                .Marks.Where(mark => mark.Purpose == MarkPurpose.SewClosureTie)
                .Select(mark => mark.From.Y)
                .Distinct();
    }

    [Fact]
    public void A_taut_boxing_is_a_quarter_lower_than_the_foam_is_thick()
    {
        // 1.20: T − 1/4 for a taut edge, the foam exact.
        CushionSpecification taut = Boxed(20, 18, 4, HandSewn) with
        {
            BoxingTautness = In(0.25m),
        };

        Assert.Equal(In(4.75m), Drafting.Of(Order(taut)).Pieces.First(piece => piece.Part.ToString() == "front").Length);
        Assert.Equal(Filling.Foam(taut with { BoxingTautness = Length.Zero }, Length.Zero), Filling.Foam(taut, Length.Zero));
    }

    [Fact]
    public void The_zipper_section_of_a_taut_boxing_is_as_high_as_the_strips_it_is_joined_to()
    {
        var zipper = new ZipperClosure(Side.Back, Length.Zero, In(0.75m));
        Drafting drafting = Drafting.Of(Order(Boxed(20, 18, 4, zipper) with { Joins = BoxingJoins.Corners, BoxingTautness = In(0.25m) }));
        Length Height(string part) => drafting.Pieces.Single(piece => piece.Part.ToString() == part).Panel!.Height;

        Assert.Equal(In(3.75m), Height("front"));
        Assert.Equal(In(3.75m), Height("zipper-upper") + Height("zipper-lower"));
    }

    [Fact]
    public void Faces_may_be_cut_to_the_nearest_step_and_strips_are_cut_up()
    {
        CushionSpecification odd = Boxed(20.05m, 18, 3.05m, HandSewn);
        OrderSpecification order = Order(odd),
            nearest = order with { Workroom = order.Workroom with { FaceRounding = FaceRounding.Nearest } };

        Assert.Equal(In(21.125m), Drafting.Of(order).Pieces[0].Width);
        Assert.Equal(In(21), Drafting.Of(nearest).Pieces[0].Width);
        Assert.Equal(In(4.125m), Drafting.Of(nearest).Pieces.First(piece => piece.Part.ToString() == "front").Length);
    }

    private static Length[] Heights(CutPiece piece) =>
        [.. piece.Panel!.Marks.Where(mark => mark.Kind == MarkKind.Button).Select(mark => mark.From.Y)];
}
