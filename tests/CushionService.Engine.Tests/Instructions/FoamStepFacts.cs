using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;
using static CushionService.Engine.Tests.Instructions.StepOrder;

namespace CushionService.Engine.Tests.Instructions;

/// <summary>Foam that is shaped once it is whole, and a wedge that is checked at both ends (common practice, no source).</summary>
public sealed class FoamStepFacts
{
    private static readonly FillSpecification Foam = new(FillKind.Foam, "foam", null, Length.Zero, 0.9m);

    private static CushionSpecification Seat =>
        Boxed(24, 22, 5, BackZipper) with
        {
            Construction = Construction.Waterfall,
            Front = FrontShape.BullNose,
            Fill = Foam,
        };

    [Fact]
    public void A_block_of_one_piece_is_rounded_as_it_is_cut() => InOrder(Seat, "5 in thick, and round its front over", "feed it in");

    [Fact]
    public void Layers_are_rounded_together_once_they_are_glued()
    {
        FoamLayerSpecification[] layers = [Layer(1), Layer(3), Layer(1)];

        InOrder(
            Seat with
            {
                Fill = Foam with { Layers = [.. layers] },
            },
            "Cut the foam",
            "Glue the layers of foam to each other (2 joints)",
            "Round the front of the foam over to a half-round with a radius of 2 1/2 in",
            "feed it in"
        );
        InOrder(
            Seat with
            {
                Fill = Foam with { Crown = In(1) },
            },
            "Glue the layers of foam",
            "Round the front of the foam over",
            "feed it in"
        );
    }

    [Fact]
    public void Sheets_that_are_thinner_than_the_seat_are_rounded_together_too() =>
        InOrder(
            OfSheets(Seat, 2.5m),
            "Cut 2 slabs of foam to the outline (rectangle), 24 in by 22 in.",
            "Glue the foam to a block 5 in high from 2 slabs: coat",
            "Round the front of the foam over",
            "feed it in"
        );

    [Fact]
    public void Sheets_with_upright_walls_are_cut_one_by_one_and_the_last_is_slit_before_they_are_glued()
    {
        // 2 + 2 + 1 is 5, as the bill has it.
        CushionSpecification box = Boxed(24, 20, 5, BackZipper) with
        {
            Fill = Foam,
        };

        InOrder(
            OfSheets(box, 2),
            "Cut 3 slabs of foam to the outline (rectangle), 24 in by 20 in.",
            "Slit the last slab to 1 in, and glue the foam to a block 5 in high from 3 slabs: coat",
            "Fold the foam in half"
        );
        Assert.Contains(
            "3 glued layers of 2 in, the last slit to 1 in",
            Quote(OfSheets(box, 2)).Materials.Single(material => material.Kind == MaterialKind.Foam).Because.ToString(),
            StringComparison.Ordinal
        );
        InOrder(
            OfSheets(box with { Fill = Foam with { Layers = [Layer(1), Layer(4)] } }, 2),
            "from top to bottom: foam, 24 in by 20 in, 1 in thick; foam, 24 in by 20 in, 2 slabs.",
            "Glue the foam to a block 4 in high from 2 slabs",
            "Glue the layers of foam to each other (1 joint)"
        );
    }

    [Fact]
    public void What_is_sawn_through_all_sheets_is_glued_before_it_is_cut()
    {
        InOrder(
            OfSheets(BolsterStepFacts.Roll with { Fill = Foam }, 2),
            "Glue the foam to a block 8 in high from 4 slabs",
            "Cut the foam to a round roll 8 in across and 24 in long"
        );
        InOrder(
            OfSheets(Boxed(24, 20, 5, BackZipper) with { Construction = Construction.Wedge, Fill = Foam }, 2),
            "Slit the last slab to 1 in, and glue the foam to a block 5 in high from 3 slabs",
            "Cut the foam 24 in by 20 in, sloping from 5 in"
        );
        // No sheet of 24 by 72 holds 80 by 20. One holds three parts of 20 by 20, so the eight of two layers take three sheets; parts of 40
        // take four. The parts of one layer take two either way, so they are the fewest.
        InOrder(
            OfSheets(Boxed(80, 20, 4, BackZipper) with { Fill = Foam }, 2),
            "Glue the foam to a block 4 in high from 2 slabs, each of 4 parts",
            "Cut the foam to the outline (rectangle), 80 in by 20 in, 4 in thick"
        );
        InOrder(
            OfSheets(Boxed(80, 20, 4, BackZipper) with { Fill = Foam }, 4),
            "Glue the foam to a block 4 in high from 2 parts",
            "Cut the foam to the outline (rectangle), 80 in by 20 in, 4 in thick"
        );
    }

    [Fact]
    public void The_front_seam_of_a_wedge_that_ends_in_a_point_turns_at_no_corner() =>
        InOrder(
            Boxed(24, 20, 6, BackZipper) with
            {
                Construction = Construction.Wedge,
            },
            "Sew the top and the bottom together, right sides together and notches matched, 24 in with 1/2 in seams.",
            "Sew the top to the boxing"
        );

    [Fact]
    public void The_boxing_of_a_wedge_that_ends_in_a_point_is_a_strip()
    {
        // Sources.Mathematics: 24 and twice √(20² + 6²) = 20.881 along the slopes are 65.761; below, 24 + 2 × 20 = 64.
        CushionSpecification wedge = Boxed(24, 20, 6, BackZipper) with
        {
            Construction = Construction.Wedge,
        };

        InOrder(wedge, " into a strip, right sides together (2 joins", "it must measure about 65 3/4 in; along the bottom 64 in.");
        InOrder(wedge with { FrontThickness = In(2) }, " into a loop, right sides together (", "lying double; along the bottom 88 in.");
    }

    [Fact]
    public void A_wedge_is_checked_at_its_back_and_its_front()
    {
        CushionSpecification wedge = Boxed(24, 20, 6, BackZipper) with { Construction = Construction.Wedge };

        InOrder(wedge with { FrontThickness = In(2) }, "24 in by 20 in, 6 in thick at the back and 2 in at the front, each within 1/4 in");
        InOrder(wedge, "24 in by 20 in, 6 in thick at the back, each within 1/4 in");
    }

    [Fact]
    public void A_roll_is_wrapped_round_and_has_no_top_front_or_back()
    {
        CushionSpecification roll = BolsterStepFacts.Roll with
        {
            Fill = Foam with { Wrap = new WrapSpecification("batting", WrapSides.FourSides, 2) },
        };

        InOrder(roll, "Cut the foam to a round roll", "Wrap 2 layers of batting round the roll, and catch its edges", "Feed the foam in");
        // Sources.Derived: π × 8 round by 24 long.
        Assert.StartsWith(
            "seat: 2 × about 25 1/8 in × 24 in round the roll",
            Quote(Order(roll)).Materials.Single(material => material.Kind == MaterialKind.Batting).Because.ToString(),
            StringComparison.Ordinal
        );
    }

    private static OrderSpecification OfSheets(CushionSpecification cushion, decimal thickness) =>
        Order(cushion) with
        {
            Stocks =
            [
                new StockSpecification
                {
                    Id = "foam",
                    Kind = MaterialKind.Foam,
                    Width = In(24),
                    Length = In(72),
                    Thickness = In(thickness),
                },
            ],
        };

    private static FoamLayerSpecification Layer(decimal thickness) => new("foam", In(thickness), null, Length.Zero);
}
