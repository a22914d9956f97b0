using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Nesting;

namespace CushionService.Engine.Tests.Cutting;

public sealed class CutPieceFacts
{
    [Theory]
    [InlineData(18, 0.125, "19", Sources.Derived)]
    [InlineData(18.01, 0.125, "19.125", Sources.Practice)]
    [InlineData(18.01, 0.015625, "19.015625", Sources.Practice)]
    [InlineData(18, 1, "19", Sources.Practice)]
    [InlineData(18.5, 1, "20", Sources.Practice)]
    public void A_cut_size_is_rounded_up_to_the_cutting_step(double finished, double step, string cut, string source)
    {
        OrderSpecification order = Order(KnifeEdge((decimal)finished, 20, HandSewn));
        order = order with { Workroom = order.Workroom with { CuttingStep = In((decimal)step) } };

        Assert.Equal(In(decimal.Parse(cut)), Drafting.Of(order).Pieces[0].Width);
    }

    [Theory]
    [InlineData(44, 20)]
    [InlineData(44, 43.5)]
    [InlineData(18, 30)]
    [InlineData(60, 12)]
    public void An_oval_is_cut_two_allowances_larger_both_ways(double width, double depth)
    {
        // Sources.Mathematics: the outline moved outward by s is level or plumb where it reaches furthest, and reaches s further there. An
        // oval of 44 in is cut 45 in wide, and fits on 45 in of fabric as a circle does.
        CushionSpecification oval = KnifeEdge(1, 1, HandSewn) with
        {
            Outline = new OvalOutline(In((decimal)width), In((decimal)depth)),
        };
        Drafting drafting = Drafting.Of(Order(oval, Fabric with { Width = In((decimal)width + 1) }));

        Assert.Empty(drafting.Violations);
        Assert.Equal((In((decimal)width + 1), In((decimal)depth + 1)), (drafting.Pieces[0].Width, drafting.Pieces[0].Length));
    }

    [Fact]
    public void A_metric_seam_stays_metric()
    {
        OrderSpecification order = Order(
            KnifeEdge(18, 18, HandSewn) with
            {
                Outline = new RectangleOutline(Mm(450), Mm(450)),
                SeamAllowance = Mm(15),
            }
        );

        Assert.Equal(Mm(480), Drafting.Of(order with { Unit = LengthUnit.Millimetre, Workroom = WorkroomPractice.Metric }).Pieces[0].Width);
    }

    [Theory]
    [InlineData(true, Rotations.None)]
    [InlineData(false, Rotations.HalfTurn)]
    public void A_piece_keeps_the_grain_of_its_fabric_and_a_loose_piece_turns_as_it_says(bool oneWay, Rotations turns)
    {
        FabricSpecification fabric = Fabric with { OneWay = oneWay };

        Assert.All(Drafting.Of(Order(KnifeEdge(18, 18, HandSewn), fabric)).Pieces, piece => Assert.Equal(turns, piece.Rotations));
        Assert.Equal(turns, Drafting.Of(Order(fabric, Piece("runner", 1, 12, 40))).Pieces[0].Rotations);
        Assert.Equal(Rotations.None, Drafting.Of(Order(fabric, Piece("runner", 1, 12, 40, Rotations.None))).Pieces[0].Rotations);
    }

    [Fact]
    public void A_loose_piece_is_cut_as_ordered_without_an_allowance()
    {
        CutPiece piece = Drafting.Of(Order(Fabric, Piece("runner", 2, 12.01m, 40))).Pieces[0];

        Assert.Equal((In(12.01m), In(40), 2), (piece.Width, piece.Length, piece.Quantity));
        Assert.Equal("about 12 in by 40 in, as ordered", Derivation.Of(piece).ToString());
    }

    [Fact]
    public void Each_part_is_cut_from_its_own_fabric()
    {
        OrderSpecification order = Order(
            Boxed(22, 20, 3, HandSewn) with
            {
                Fabrics = new FabricRoles("linen", "lining", "trim", "webbing"),
                Handle = Strap,
            }
        );
        order = order with { Fabrics = [.. new[] { "linen", "lining", "trim", "webbing" }.Select(id => Fabric with { Id = id })] };

        Assert.Equal(
            ["top of linen", "bottom of lining", "front of trim", "right of trim", "back of trim", "left of trim", "handle of webbing"],
            Drafting.Of(order).Pieces.Select(piece => $"{piece.Part} of {piece.Fabric}")
        );
    }
}
