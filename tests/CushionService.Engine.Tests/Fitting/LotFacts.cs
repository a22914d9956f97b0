using System.Collections.Immutable;
using CushionService.Engine.Fitting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Tests.Fitting;

/// <summary>Pillows of two faces of 19 by 19 in, held against what one has. That lots are not mixed on a cushion is common practice, no
/// source.</summary>
public sealed class LotFacts
{
    [Fact]
    public void Each_cushion_is_cut_from_one_offcut_though_its_pieces_would_fit_on_two()
    {
        // Largest first, a face on each offcut of 20 in would leave the long one for the rest.
        OffcutFit fit = Pillows(2, new(In(20), In(40)), new(In(54), In(20)));

        Assert.Equal(FitVerdict.Fits, fit.Verdict);
        Assert.Empty(fit.Split);
        Assert.All(fit.Layouts, layout => Assert.Equal(["seat/bottom", "seat/top"], Ids(layout)));
    }

    [Fact]
    public void Offcuts_of_one_lot_serve_a_cushion_together()
    {
        OffcutFit fit = Pillows(1, new(In(20), In(20), "B 7"), new(In(20), In(20), "B 7"), new(In(20), In(20), "C 1"));

        Assert.Equal((FitVerdict.Fits, 0), (fit.Verdict, fit.Split.Length));
        Assert.Empty(fit.Layouts[2].Placements);
    }

    [Fact]
    public void A_cushion_that_no_lot_holds_is_cut_from_several_and_that_is_said()
    {
        OffcutFit fit = Pillows(1, new(In(20), In(20), "B 7"), new(In(20), In(20)));
        Violation said = Assert.Single(fit.Split).Said("main");

        Assert.Equal(FitVerdict.Fits, fit.Verdict);
        Assert.Equal("several-lots", said.Code);
        Assert.StartsWith("The pieces of seat in main come from lot B 7 and offcut 2", said.Detail.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_fabric_s_lot_is_that_of_offcuts_that_name_none()
    {
        FabricSpecification fabric = Fabric with { Lot = "B 7", OnHand = [new(In(20), In(20)), new(In(20), In(20), "B 7")] };

        Assert.Empty(Fit(fabric, KnifeEdge(18, 18, HandSewn)).Split);
    }

    [Fact]
    public void The_inner_cover_may_come_from_any_lot()
    {
        // The faces fill the one offcut, the cover within the cover the other.
        CushionSpecification cushion = KnifeEdge(18, 18, HandSewn);
        cushion = cushion with { Fabrics = cushion.Fabrics with { InnerCover = "main" } };
        OffcutFit fit = Fit(Fabric with { OnHand = [new(In(38), In(19)), new(In(19), In(38))] }, cushion);

        Assert.Equal((FitVerdict.Fits, 0), (fit.Verdict, fit.Split.Length));
    }

    [Theory]
    [InlineData(20)]
    [InlineData(6)]
    public void On_a_repeat_too_every_copy_is_laid_once_on_its_phase_and_no_offcut_holds_half_a_cushion(int repeat)
    {
        // Sources.Practice: a repeat of each offcut is kept to find the motif.
        RepeatSpecification square = new(In(repeat), In(repeat), DropKind.Straight);
        FabricSpecification fabric = Fabric with
        {
            Repeat = square,
            OnHand = [new(In(54), In(60)), new(In(40), In(62)), new(In(54), In(100)), new(In(30), In(30))],
        };
        OffcutFit fit = Fit(fabric, KnifeEdge(18, 18, HandSewn) with { Quantity = 4 });

        Assert.Equal((FitVerdict.Fits, 0), (fit.Verdict, fit.Split.Length));
        Assert.Equal(8, fit.Layouts.Sum(layout => layout.Placements.Length));
        foreach (OffcutLayout layout in fit.Layouts)
        {
            Assert.Equal(Ids(layout).Count(id => id == "seat/top"), Ids(layout).Count(id => id == "seat/bottom"));
            Assert.All(layout.Placements, laid => Assert.True(laid.IsMatched && laid.Y + laid.Length <= layout.Room.Length));
            // Faces of one size lie whole repeats apart.
            Assert.Single(layout.Placements.Select(laid => laid.X.Nanometres % In(repeat).Nanometres).Distinct().DefaultIfEmpty());
            Assert.Single(layout.Placements.Select(laid => laid.Y.Nanometres % In(repeat).Nanometres).Distinct().DefaultIfEmpty());
        }
    }

    [Fact]
    public void What_is_said_to_fit_on_a_repeat_fits_wherever_its_motif_is()
    {
        // Sources.Mathematics: brute force over positions; the offcut's motif known along, the layout starts with the cut and may take all.
        for (var number = 0; number < 40; number++)
        {
            var random = new Random(number);
            Length along = In(random.Next(4, 24)),
                across = In(random.Next(4, 24));
            FabricSpecification fabric = Fabric with
            {
                Width = In(random.Next(30, 60)),
                Repeat = new RepeatSpecification(along, across, random.Next(2) == 0 ? DropKind.Half : DropKind.Straight),
            };
            FabricSpecification onHand = fabric with { OnHand = [new(fabric.Width, In(random.Next(40, 110)))] };
            CushionSpecification cushion = KnifeEdge(random.Next(6, 20), random.Next(6, 20), HandSewn) with
            {
                Quantity = random.Next(1, 4),
            };
            if (Fit(onHand, cushion).Verdict != FitVerdict.Fits)
            {
                continue;
            }

            foreach (int percent in new[] { 0, 13, 37, 50, 86, 99 })
            {
                RepeatSpecification known = fabric.Repeat with
                {
                    MotifX = Length.FromNanometres(across.Nanometres * percent / 100),
                    MotifY = Length.FromNanometres(along.Nanometres * (100 - percent) / 100),
                };
                OrderSpecification order = Order(cushion, fabric with { Repeat = known }) with { Effort = Effort.Standard };
                FabricLayout layout = Quote(order).Yardages[0].Layout;
                Assert.True(layout.Length <= onHand.OnHand[0].Length, $"Order {number} at {percent} %: {layout.Length}.");
            }
        }
    }

    // Faces of 19 in: where the motif may be, the offcut leaves them less than their own width to move in.
    [Theory]
    [InlineData(20)]
    [InlineData(24)]
    [InlineData(30)]
    public void An_offcut_hardly_wider_than_its_pieces_takes_them_wherever_its_motif_is(int width)
    {
        FabricSpecification fabric = Fabric with { Repeat = new RepeatSpecification(In(13.5m), In(9), DropKind.Straight) };
        OffcutFit fit = Fit(fabric with { OnHand = [new(In(width), In(100))] }, KnifeEdge(18, 18, HandSewn));

        Assert.Equal((FitVerdict.Fits, 2), (fit.Verdict, fit.Layouts[0].Placements.Length));
    }

    private static OffcutFit Pillows(int quantity, params ImmutableArray<OffcutSpecification> onHand) =>
        Fit(Fabric with { OnHand = onHand }, KnifeEdge(18, 18, HandSewn) with { Quantity = quantity });

    private static OffcutFit Fit(FabricSpecification fabric, CushionSpecification cushion) =>
        OffcutFit.Of(fabric, Drafting.Of(Order(cushion, fabric)).Pieces, Effort.Quick, 1, CancellationToken.None);

    private static IEnumerable<string> Ids(OffcutLayout layout) => layout.Placements.Select(laid => laid.Piece.Id).Order();
}
