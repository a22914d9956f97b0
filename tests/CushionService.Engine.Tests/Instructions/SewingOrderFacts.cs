using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Instructions;

/// <summary>The order of sewing (common practice, no source).</summary>
public sealed class SewingOrderFacts
{
    [Fact]
    public void A_zippered_box_is_cut_zipped_joined_to_a_loop_and_sewn_to_its_faces() =>
        InOrder(
            Quote(Order(Boxed(24, 22, 4, BackZipper, BoxingJoins.Back))),
            "square its end, and cut",
            "Join boxing-1 to boxing-2, right sides together (1 join with 1/2 in seams)",
            "closure edges of zipper-upper and zipper-lower under by 3/4 in",
            "30 in along each tape. The section must measure 5 in from raw edge to raw edge",
            "Join the section of the zipper to boxing into a loop, right sides together (2 joins with 1/2 in seams)",
            "it must measure 92 in, 46 in lying double",
            "Sew the top to the boxing, right sides together, 92 in on the seam line with 1/2 in seams",
            "Open the zipper halfway. Sew the bottom to the boxing, right sides together, 92 in on the seam line",
            "turn the cover right side out",
            "Check the finished size"
        );

    [Fact]
    public void A_hook_and_loop_box_is_hemmed_and_its_strips_basted_before_the_loop_is_joined() =>
        InOrder(
            Quote(Order(Boxed(22, 20, 3, HookAndLoop(0.5m, 1.25m)) with { Handle = Strap })),
            "edge of closure-upper twice by 1/2 in",
            "edge of closure-lower twice by 1/2 in",
            "Sew the hook tape to the right side of closure-lower and the loop tape to the wrong side of closure-upper",
            "closure-upper lapping over closure-lower by 1 1/4 in, and baste",
            "fold it in half",
            "Sew each end of the handle to front at its marks, 9 3/4 in apart, with a boxed X",
            "(4 joins with 1/2 in seams)",
            "turn the cover right side out"
        );

    [Fact]
    public void A_hand_sewn_pillow_is_closed_last() =>
        InOrder(
            Quote(
                Order(KnifeEdge(18, 18, HandSewn) with { Fill = new FillSpecification(FillKind.Loose, "feather", 52, Length.Zero, 0.9m) })
            ),
            "leave a gap in the back seam",
            "through the gap",
            "Fill the cover through the opening, the corners first",
            "Close the gap by hand with a ladder stitch",
            "Check the finished size: 18 in by 18 in, each within 1/4 in"
        );

    [Fact]
    public void Fabric_that_shrinks_is_washed_first() =>
        Assert.StartsWith(
            "Wash, dry and press",
            Quote(Order(KnifeEdge(18, 18, HandSewn), Fabric with { WidthShrinkage = Percent(2) })).Steps[0].Text.ToString(),
            StringComparison.Ordinal
        );

    [Fact]
    public void Every_step_names_pieces_that_are_cut_and_every_piece_is_handled_after_it_is_cut()
    {
        foreach (
            CushionSpecification cushion in new[]
            {
                Boxed(50, 40, 4, BackZipper, BoxingJoins.Back),
                Boxed(22, 20, 3, HookAndLoop(0.5m, 1.25m)),
                KnifeEdge(18, 18, new EnvelopeClosure(Side.Bottom, In(0.5m), In(4))),
            }
        )
        {
            Quote quote = Quote(Order(cushion));
            string[] cut = [.. quote.Drafting.Pieces.Select(piece => piece.Id).Order()];

            Assert.Equal(cut, quote.Steps[0].Pieces.Order());
            Assert.Equal(cut, quote.Steps.Skip(1).SelectMany(step => step.Pieces).Distinct().Order());
        }
    }

    private static void InOrder(Quote quote, params string[] parts)
    {
        string steps = string.Join('\n', quote.Steps.Select(step => step.Text.ToString()));
        var from = 0;
        foreach (string part in parts)
        {
            int at = steps.IndexOf(part, from, StringComparison.Ordinal);
            Assert.True(at >= from, $"\"{part}\" is missing or out of order in:\n{steps}");
            from = at;
        }
    }
}
