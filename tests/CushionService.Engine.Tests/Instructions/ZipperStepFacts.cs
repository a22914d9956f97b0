using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Specifications.Trimmings;
using static CushionService.Engine.Tests.Instructions.StepOrder;

namespace CushionService.Engine.Tests.Instructions;

/// <summary>What is done to a zipper before it is set in, and how far it is sewn (common practice, no source).</summary>
public sealed class ZipperStepFacts
{
    // A section of 40 in and 3 in round each corner is 46 in, which takes a zipper of 45; one up to 47 is caught in the joins.
    private static readonly CushionSpecification Bench = Boxed(40, 20, 3, BackZipper);

    private static readonly StockSpecification Chain = new()
    {
        Id = "chain",
        Kind = MaterialKind.Zipper,
        Sold = new UnitSale(SaleUnit.Yd, 0.125m, 0),
    };

    private static StockSpecification Closed(decimal length) =>
        new()
        {
            Id = "closed",
            Kind = MaterialKind.Zipper,
            Length = In(length),
        };

    private static OrderSpecification With(CushionSpecification cushion, StockSpecification stock) =>
        Order(cushion) with
        {
            Stocks = [stock],
        };

    private static string Steps(OrderSpecification order)
    {
        Drafting drafting = Drafting.Of(order);
        return string.Join('\n', Engine.Instructions.SewingOrder.Of(order, drafting.Patterns, drafting.Pieces).Select(step => step.Text));
    }

    [Fact]
    public void The_section_of_any_closure_says_how_high_it_must_be()
    {
        // 3 3/8 in and two seams of 1/2 in; each strip of 3 11/16 in is cut 3 3/4.
        CushionSpecification box = Boxed(24, 22, 4, HandSewn) with
        {
            Joins = BoxingJoins.Corners,
            Thickness = In(3.375m),
            Closure = new HookAndLoopClosure(Side.Back, Length.Zero, In(0.5m), In(1), In(0.75m)),
        };

        Assert.Contains(
            Quote(Order(box)).Steps.Select(step => step.Text.ToString()),
            step =>
                step.Contains(
                    "The section must measure 4 3/8 in from raw edge to raw edge: trim off what it measures more",
                    StringComparison.Ordinal
                )
        );
    }

    [Fact]
    public void A_zipper_that_is_too_long_to_be_caught_is_shortened_before_it_is_set_in() =>
        InOrder(
            With(Bench, Closed(50)),
            "Shorten the zipper to 45 in: sew several stitches across its closed teeth there, and cut it off 1/2 in beyond them.",
            "to each other beyond both ends of the zipper, right sides together, 1 in in all with 3/4 in seams",
            "sew it in, 45 in along each tape",
            "into a loop"
        );

    [Fact]
    public void Strips_that_come_out_higher_than_the_boxing_are_trimmed_to_it()
    {
        // Half of 4 1/8, 1/2 and 3/4 are 3 5/16, cut 3 3/8: 2 × 3 3/8 − 2 × 3/4 is 5 1/4, and the boxing is cut 4 1/8 + 1.
        InOrder(
            Boxed(24, 20, 4.125m, BackZipper),
            "The section must measure 5 1/8 in from raw edge to raw edge: trim off what it measures more."
        );
        // 2 + 1/2 + 3/4 is 3 1/4 as it is.
        InOrder(Boxed(24, 20, 4, BackZipper), "The section must measure 5 in from raw edge to raw edge.");
    }

    [Fact]
    public void A_zipper_that_is_too_short_is_sewn_in_along_itself_and_the_rest_of_its_section_is_sewn_shut()
    {
        // 46 less 14 in.
        InOrder(
            With(Bench, Closed(14)),
            "to each other beyond both ends of the zipper, right sides together, 32 in in all with 3/4 in seams",
            "sew it in, 14 in along each tape"
        );
        // Under a lap of 1/2 in, which both edges have a half of: 2 × 1 in off what is 2 × 3/4 and the lap too high.
        InOrder(
            With(Bench with { Closure = BackZipper with { Lap = In(0.5m) } }, Closed(14)),
            "beyond both ends of the zipper, right sides together, 32 in in all with 1 in seams",
            "topstitch through fold and tape, 14 in along each"
        );
        // In a side seam of 18 in: 2 in from each corner, though 1 1/4 is marked.
        InOrder(
            With(KnifeEdge(18, 18, BackZipper with { Return = Length.Zero }), Closed(14)),
            "in from each corner past the zipper's mark to where the shorter zipper ends, 2 in from it, and backstitch there; "
                + "machine-baste between the ends, 14 in."
        );
        // Beside an edging nothing is basted, and its tapes are sewn on between the same ends.
        CushionSpecification edged = KnifeEdge(18, 18, BackZipper with { Return = Length.Zero }) with
        {
            Trim = new TrimSpecification { Edging = new WeltSpecification([EdgingPlace.Top], In(0.15625m), WeltCut.Bias) },
        };
        InOrder(
            With(edged, Closed(14)),
            "where the shorter zipper ends, 2 in from it, and backstitch there.",
            "Sew one tape of the open zipper, face down, to the top between the ends of that seam, close to its edging"
        );
        InOrder(Order(edged), "Sew one tape of the open zipper, face down, to the top between the marks, close to its edging");
    }

    [Fact]
    public void A_zipper_that_is_caught_in_the_joins_is_sewn_in_along_its_whole_section()
    {
        InOrder(With(Bench, Closed(47)), "sew it in, 46 in along each tape");
        Assert.DoesNotContain("beyond both ends of the zipper", Steps(With(Bench, Closed(47))), StringComparison.Ordinal);
        Assert.DoesNotContain("Shorten the zipper", Steps(With(Bench, Closed(47))), StringComparison.Ordinal);
    }

    [Fact]
    public void Chain_is_cut_from_raw_edge_to_raw_edge_of_its_section_and_its_sliders_are_put_on()
    {
        // 46 in and a seam allowance at each end.
        InOrder(
            With(Bench, Chain),
            "Cut 47 in of zipper chain and put its slider on; sew a few stitches across the teeth at each end",
            "so that it does not come off",
            "sew it in, 46 in along each tape"
        );
        string two = Steps(With(Bench with { Closure = BackZipper with { Sliders = 2 } }, Chain));
        Assert.Contains("put its 2 sliders on, their pulls towards each other; sew a few", two, StringComparison.Ordinal);
        Assert.DoesNotContain("Put 2 sliders", two, StringComparison.Ordinal);
        // In a side seam of 18 in, 2 1/2 less.
        InOrder(
            With(KnifeEdge(18, 18, BackZipper with { Return = Length.Zero }), Chain),
            "Cut 15 1/2 in of zipper chain",
            "Sew the back seam"
        );
    }

    [Fact]
    public void A_zipper_that_is_made_up_to_its_length_needs_nothing_before()
    {
        string made = Steps(Order(Bench));
        Assert.DoesNotContain("zipper chain", made, StringComparison.Ordinal);
        Assert.DoesNotContain("Shorten", made, StringComparison.Ordinal);
        Assert.Contains("46 in along each tape", made, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tied_roll_with_a_short_zipper_is_sewn_shut_beyond_it_in_one_go()
    {
        // 24 in of body less 14, besides the two tails of 4 + 6 in.
        CushionSpecification sweet = BolsterStepFacts.Roll with
        {
            Ends = new BolsterEnds(BolsterEndKind.Tied, In(6), In(0.75m)),
        };
        InOrder(
            With(sweet, Closed(14)),
            "beyond both ends of the zipper, right sides together, 30 in in all with 3/4 in seams",
            "14 in along"
        );
    }
}
