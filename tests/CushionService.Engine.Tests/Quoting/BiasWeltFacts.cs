using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Quoting;

/// <summary>Welt is laid once for an order, and what the bias costs is said.</summary>
public sealed class BiasWeltFacts
{
    private static readonly FabricSpecification Trim45 = Fabric with { Id = "trim", Width = In(45) };

    [Fact]
    public void All_welt_of_one_fabric_cord_and_cut_is_one_lay()
    {
        // Sources.Derived: 24 × 22 × 4 needs 188 in; two of them and one of 20 × 20 × 4, 164 in, need 540 in and 1 1/2 in for a strip's
        // end.
        CushionSpecification box = Welted(24, 22, WeltCut.Crosswise) with { Quantity = 2 },
            other = Welted(20, 20, WeltCut.Crosswise) with { Id = "other" };
        var drafting = Drafting.Of(Order(box, other));
        CutPiece welt = drafting.Pieces.Single(piece => piece.Welt is not null);

        Assert.Equal(("trim", "seat/welt"), (welt.Fabric, welt.Id));
        Assert.Equal(
            [("seat", 2, In(376)), ("other", 1, In(164))],
            welt.Serves.Select(share => (share.Cushion, share.Covers, share.Length))
        );
        Assert.True(welt.Welt!.Supplied >= In(541.5m));
        // 541 1/2 over 45 less 1 1/2 is 12.4: 13 strips; apart they would be 9 and 4.
        Assert.Equal(13, welt.Quantity);
        Assert.Contains(
            "540 in in all, and 1 1/2 in for a strip's end: 541 1/2 in",
            Derivation.Of(welt).ToString(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Another_cord_is_another_lay()
    {
        CushionSpecification box = Welted(24, 22, WeltCut.Crosswise);
        CushionSpecification thick = Welted(20, 20, WeltCut.Crosswise) with
        {
            Id = "other",
            Trim = new TrimSpecification { Edging = new WeltSpecification([EdgingPlace.Top], In(0.25m), WeltCut.Crosswise) },
        };

        Assert.Equal(2, Drafting.Of(Order(box, thick)).Pieces.Count(piece => piece.Welt is not null));
    }

    [Fact]
    public void Every_cushion_of_a_lay_has_its_piece_in_its_steps_and_its_share_in_the_cost()
    {
        CushionSpecification other = Welted(20, 20, WeltCut.Crosswise) with { Id = "other" };
        Quote quote = Quote(Order(Welted(24, 22, WeltCut.Crosswise), other));

        Assert.True(quote.Steps.Count(step => step.Pieces.Contains("seat/welt")) > 4);
        Assert.Contains(quote.Steps, step => step.Pieces.Contains("seat/welt") && step.Pieces.Contains("other/top"));
    }

    [Fact]
    public void What_bias_by_default_costs_is_said_with_what_straight_welt_would_save()
    {
        // Sources.Practice: straight crosswise for straight sides in plain fabric.
        OrderSpecification order = Order(Welted(24, 22, WeltCut.Bias, usual: true));
        Yardage trim = Quote(order).Yardages.Single(yardage => yardage.Layout.Fabric.Id == "trim");
        Yardage straight = Quote(Order(Welted(24, 22, WeltCut.Crosswise))).Yardages.Single(yardage => yardage.Layout.Fabric.Id == "trim");
        Violation said = WeltNote.Of(trim)!;

        Assert.Equal(("/cushions/0/edging", "bias-costs-more"), (said.Pointer, said.Code));
        Assert.Equal(straight.Sold, trim.StraightWelt!.Sold);
        // By hand: 189 1/2 over 43 1/2 is five strips of 1 1/2, 7 1/2 in, sold as 1/4 yd; the bias takes a square or a block of strips.
        Assert.Equal(In(9), straight.Sold);
        Assert.Equal(
            $"With the strips of its edging on the bias the order takes {trim.SoldAmount} of trim. Straight strips would do on straight "
                + $"sides of a plain fabric, and take "
                + $"1/4 yd, {LengthText.Format(trim.Sold - straight.Sold, LengthUnit.Yard)} less. To cut them so, set the edging's cut "
                + $"to crosswise.",
            said.Detail.ToString()
        );
    }

    [Fact]
    public void Bias_on_a_fabric_of_its_own_is_cut_from_the_squares_that_are_sold_shortest()
    {
        // By hand: 20 × 18 needs 2 × 76 and 4 in, two of 24 × 24 need 2 × (2 × 96 + 4): 548 in, and 1 7/8 for a strip's end. One square of
        // 35 in is sold as 1 yd; straight, 13 strips of 1 7/8 are 24 3/8 in, 3/4 yd. The strips' own area, 548 × 1 7/8 over 45, is 22.8 in,
        // so that 3/4 yd of bias is not shown to be impossible.
        CushionSpecification[] boxes = [Corded(20, 18) with { Id = "a" }, Corded(24, 24) with { Quantity = 2 }];
        OrderSpecification order = Order(boxes);
        Yardage trim = Quote(order).Yardages.Single(yardage => yardage.Layout.Fabric.Id == "trim");
        CutPiece square = trim.Layout.Placements.Single().Piece;

        Assert.Equal((In(35), In(36), In(27)), (square.Width, trim.Sold, trim.StraightWelt!.Sold));
        Assert.Contains("1/4 yd less", WeltNote.Of(trim)!.Detail.ToString(), StringComparison.Ordinal);
        Assert.False(trim.Layout.ProvenMinimal);
        Assert.Null(LayoutProof.Of(trim.Layout));
        Assert.Equal(22.84, (double)trim.Layout.LowerBound.In(LengthUnit.Inch), 0.01);

        // By the whole yard nothing shorter is sold, however the strips are cut.
        FabricSpecification byTheYard = Trim45 with
        {
            Sold = new SaleRule(SaleUnit.Yd, In(36), Length.Zero),
        };
        Assert.True(
            Quote(order with { Fabrics = [Fabric, byTheYard] }).Yardages.Single(one => one.Layout.Fabric.Id == "trim").Layout.ProvenMinimal
        );
    }

    [Fact]
    public void Where_bias_is_asked_for_or_needed_nothing_is_said()
    {
        CushionSpecification usual = Welted(24, 22, WeltCut.Bias, usual: true);

        Assert.Null(Said(Order(Welted(24, 22, WeltCut.Bias))));
        Assert.Null(Said(Order(usual with { Outline = new CircleOutline(In(24)) })));
        Assert.Null(Said(Order(usual) with { Fabrics = [Fabric, Trim45 with { OneWay = true }] }));
        Assert.NotNull(Said(Order(usual)));
    }

    private static Violation? Said(OrderSpecification order) =>
        WeltNote.Of(Quote(order).Yardages.Single(yardage => yardage.Layout.Fabric.Id == "trim"));

    private static CushionSpecification Welted(decimal width, decimal depth, WeltCut cut, bool usual = false) =>
        Boxed(width, depth, 4, HandSewn) with
        {
            Pointer = "/cushions/0",
            Trim = new TrimSpecification
            {
                Edging = new WeltSpecification([EdgingPlace.Top, EdgingPlace.Bottom], In(0.15625m), cut) { IsCutUsual = usual },
            },
            Fabrics = new FabricRoles("main", "main", "main", "main") { Edging = "trim" },
        };

    private static CushionSpecification Corded(decimal width, decimal depth) =>
        Welted(width, depth, WeltCut.Bias, usual: true) with
        {
            Trim = new TrimSpecification
            {
                Edging = new WeltSpecification([EdgingPlace.Top, EdgingPlace.Bottom], In(0.25m), WeltCut.Bias) { IsCutUsual = true },
            },
        };

    private static OrderSpecification Order(params CushionSpecification[] cushions) =>
        Trade.Order(cushions[0]) with
        {
            Cushions = [.. cushions],
            Fabrics = [Fabric, Trim45],
        };
}
