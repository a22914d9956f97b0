using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Tests.Layouts;

/// <summary>A pillow of two faces of 19 by 19 in, on fabric of 54 in.</summary>
public sealed class MotifFacts
{
    private static readonly RepeatSpecification Twenty = new(In(20), In(20), DropKind.Straight);

    [Fact]
    public void A_known_motif_costs_what_lies_before_it_and_no_repeat()
    {
        // Sources.Mathematics: motifs at 6, 26, 46 in along; a face needs 9 1/2 in before its motif, so the first lies from 16 1/2 in on
        // and the second a repeat further. Across only 27 in leaves 9 1/2 in on both sides.
        Yardage yardage = Pillow(Twenty with { MotifX = In(27), MotifY = In(6) });

        Assert.Equal([In(16.5m), In(36.5m)], yardage.Layout.Placements.Select(laid => laid.Y).Order());
        Assert.All(yardage.Layout.Placements, laid => Assert.Equal(In(17.5m), laid.X));
        Assert.Equal((In(55.5m), Length.Zero), (yardage.Layout.Length, yardage.Layout.Start));
        Assert.Equal("55 1/2 in laid out, up to the next 1/8 yd: 1 5/8 yd", yardage.Because.ToString());
        Assert.True(yardage.Layout.ProvenMinimal);
        Assert.Null(MotifNote.Of(yardage));
    }

    [Fact]
    public void An_unknown_motif_is_planned_for_where_it_is_worst()
    {
        // Sources.Mathematics: with a motif beyond 15 in from the left edge of its repeat one face lies beside none: 20 + 19 = 39 in, and a
        // repeat to start. With it at 9 1/2 in two lie side by side, and both start with the cut.
        Yardage yardage = Pillow(Twenty);

        Assert.Equal((In(39), In(20)), (yardage.Layout.Length, yardage.Layout.Start));
        Assert.EndsWith("1 3/4 yd, enough wherever the first motif is", yardage.Because.ToString(), StringComparison.Ordinal);
        Assert.True(yardage.Layout.ProvenMinimal);
        Assert.Equal(In(22.5m), yardage.SoldAtBest);
        Assert.Equal(
            "The place of the first motif of main is not given, so 1 3/4 yd is enough wherever it is. At the best position found 5/8 yd "
                + "would do, "
                + "40 1/2 in less. To plan for one position, measure from the left edge of the usable width and from the cut to the "
                + "centre of the motif, and give it as the repeat's motif.",
            MotifNote.Of(yardage)!.Detail.ToString()
        );
    }

    [Fact]
    public void Thirds_of_a_metre_are_counted_in_steps_at_the_best_position_too()
    {
        // Sources.Mathematics: the faces side by side are 19 in, 0.4826 m, and two thirds of a metre are the next step. At the worst
        // position 39 in and a repeat of 20 in to start, 1.4986 m, are 5 thirds.
        Yardage yardage = Pillow(Twenty, new SaleRule(SaleUnit.M, Length.FromNanometres(333_333_333), Length.Zero));

        Assert.Equal((Fraction.Of(5, 3), Fraction.Of(2, 3)), (yardage.SoldAmount.Units, yardage.SoldAmountAtBest!.Value.Units));
        Assert.Contains("position found 2/3 m would do", MotifNote.Of(yardage)!.Detail.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(9.5, 19)]
    [InlineData(15, 19)]
    [InlineData(24.5, 19)]
    [InlineData(24.75, 39)]
    [InlineData(29.5, 19)]
    public void Knowing_it_across_alone_decides_the_columns(double x, int laid)
    {
        // Sources.Mathematics: two columns 20 in apart are 39 in wide; the left one starts at x − 9 1/2 in, modulo 20 in, at most at 15 in.
        Yardage yardage = Pillow(Twenty with { MotifX = In((decimal)x) });

        Assert.Equal((In(laid), In(20)), (yardage.Layout.Length, yardage.Layout.Start));
    }

    [Fact]
    public void What_fits_at_a_single_position_is_planned_for_there_too()
    {
        // Sources.Mathematics: faces as wide as the fabric match with a motif on its centre line alone: 20 + 19 in; elsewhere 2 × 19 in.
        RepeatSpecification wide = new(In(20), In(60), DropKind.Straight);
        Yardage Of(RepeatSpecification repeat) => Quote(Order(KnifeEdge(53, 18, HandSewn), Fabric with { Repeat = repeat })).Yardages[0];

        Assert.Equal(In(39), Of(wide).Layout.Length);
        Assert.Equal(In(39), Of(wide with { MotifX = In(27) }).Layout.Length);
        Assert.Equal(In(38), Of(wide with { MotifX = In(26) }).Layout.Length);
    }

    [Fact]
    public void Stripes_up_the_bolt_need_no_start()
    {
        // Sources.Mathematics: one column at the worst position, of which nothing is matched along: 2 × 19 in.
        Yardage yardage = Pillow(new RepeatSpecification(null, In(20), DropKind.Straight));

        Assert.Equal((In(38), Length.Zero), (yardage.Layout.Length, yardage.Layout.Start));
        Assert.Equal(In(22.5m), yardage.SoldAtBest);
    }

    [Fact]
    public void Bands_across_the_bolt_are_matched_side_by_side()
    {
        Yardage yardage = Pillow(new RepeatSpecification(In(20), null, DropKind.Straight));

        Assert.Equal((In(19), In(20)), (yardage.Layout.Length, yardage.Layout.Start));
        Assert.Contains(
            "measure from the cut to the centre of the motif",
            MotifNote.Of(yardage)!.Detail.ToString(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Without_a_matched_piece_no_repeat_is_bought()
    {
        MatchSpecification free = new(FaceMatch.Free, UndersideMatch.Free, BoxingMatch.Free);
        Yardage yardage = Quote(Order(KnifeEdge(18, 18, HandSewn) with { Match = free }, Fabric with { Repeat = Twenty })).Yardages[0];

        Assert.Equal("19 in laid out, up to the next 1/8 yd: 5/8 yd", yardage.Because.ToString());
    }

    [Fact]
    public void A_motif_is_measured_before_the_wash()
    {
        // Sources.Mathematics: 30 in across keeps 27 in of 10 %, and 20 in along 18 in.
        FabricSpecification fabric = Fabric with
        {
            Width = In(60),
            WidthShrinkage = Percent(10),
            LengthShrinkage = Percent(10),
            Repeat = new RepeatSpecification(In(60), In(60), DropKind.Straight) { MotifX = In(30), MotifY = In(20) },
        };
        FabricLayout layout = Quote(Order(KnifeEdge(18, 18, HandSewn), fabric)).Yardages[0].Layout;

        Assert.All(layout.Placements, laid => Assert.Equal((In(17.5m), 0), (laid.X, (laid.Y - In(8.5m)).Nanometres % In(54).Nanometres)));
    }

    private static Yardage Pillow(RepeatSpecification repeat, SaleRule? sold = null) =>
        Quote(Order(KnifeEdge(18, 18, HandSewn), Fabric with { Repeat = repeat, Sold = sold ?? Fabric.Sold })).Yardages[0];
}
