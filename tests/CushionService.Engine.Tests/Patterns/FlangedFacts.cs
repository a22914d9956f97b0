using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Patterns;

/// <summary>The mitres of a double flange, and what closes the underside of a flanged cover (common practice, no source).</summary>
public sealed class FlangedFacts
{
    [Theory]
    [InlineData(0.25, 2, "3/4 in")]
    [InlineData(0.75, 2, "1 1/4 in")]
    [InlineData(0.25, 1, "3/4 in")]
    [InlineData(2, 2, "2 in")]
    [InlineData(2, 0.5, "1/2 in")]
    public void The_allowance_of_a_mitre_is_no_deeper_than_its_flange_and_what_is_turned_in(double width, double allowance, string mitre)
    {
        CushionSpecification cushion = KnifeEdge(18, 18, new EnvelopeClosure(Side.Bottom, In(0.5m), In(4))) with
        {
            Construction = Construction.Flanged,
            SeamAllowance = In((decimal)allowance),
            Flange = new FlangeSpecification(FlangeLayers.Double, In((decimal)width), In(0.5m)),
        };
        Quote quote = Quote(Order(cushion));

        // 26 in and 1/2 in turned in at both ends, for a flange of 2 in.
        Assert.Equal(In(18 + (4 * (decimal)width) + 1), quote.Drafting.Pieces[0].Width);
        Assert.Contains(
            quote.Steps,
            step =>
                step.Text.ToString().Contains("sew its mitre", StringComparison.Ordinal)
                && step.Text.ToString().EndsWith($"with {mitre} seams.", StringComparison.Ordinal)
        );
    }

    private static Quote Flanged(ClosureSpecification closure) =>
        Quote(
            Order(
                KnifeEdge(20, 20, closure) with
                {
                    Construction = Construction.Flanged,
                    Flange = new FlangeSpecification(FlangeLayers.Single, In(2), Length.Zero),
                }
            )
        );

    [Theory]
    // Both parts are 12 in and half the lap deep: without their seams beyond the zipper they must be 24 in, as the top is.
    [InlineData(0.5, "4 in in all with 1 in seams")]
    [InlineData(0, "4 in in all with 3/4 in seams")]
    public void Beyond_a_lapped_zipper_the_underside_is_no_deeper_than_over_it(double lap, string seams)
    {
        Quote quote = Flanged(new ZipperClosure(Side.Bottom, Length.Zero, In(0.75m), In((decimal)lap)));
        Length[] depths =
        [
            .. quote.Drafting.Patterns[0].Panels.Where(panel => panel.Part.Kind == PartKind.Bottom).Select(panel => panel.Height),
        ];

        Assert.Equal(In(24) + In((decimal)lap), depths[0] + depths[1]);
        Assert.Contains(quote.Steps, step => step.Text.ToString().Contains(seams, StringComparison.Ordinal));
    }

    [Fact]
    public void A_zipper_and_a_tape_end_at_marks_on_both_flaps_at_the_edge_of_the_body()
    {
        // Flaps of 24 in, the body 2 in from both ends.
        Quote zipped = Flanged(new ZipperClosure(Side.Bottom, Length.Zero, In(0.75m))),
            taped = Flanged(HookAndLoop(0.5m, 1.5m, Side.Bottom));

        foreach (string part in (string[])["bottom-front", "bottom-back"])
        {
            Assert.Equal([In(2), In(22)], Marks(zipped, part, MarkPurpose.StopZipper).Select(mark => mark.From.X));
            Assert.Equal([In(2), In(22)], Marks(taped, part, MarkPurpose.EdgeOfBody).Select(mark => mark.From.X));
            // Across the overlap, from the hem inward.
            Length hem = part == "bottom-front" ? In(12.75m) : In(0),
                inner = part == "bottom-front" ? In(11.25m) : In(1.5m);
            Assert.All(Marks(taped, part, MarkPurpose.EdgeOfBody), mark => Assert.Equal((hem, inner), (mark.From.Y, mark.To!.Value.Y)));
        }

        Assert.Contains(
            taped.Steps,
            step => step.Text.ToString().Contains("1/2 in short of the marks of the body's edge.", StringComparison.Ordinal)
        );
        Assert.Contains(
            Quote(Order(KnifeEdge(20, 20, HookAndLoop(0.5m, 1.5m, Side.Bottom)))).Steps,
            step => step.Text.ToString().Contains("1/2 in short of the seam line at each end.", StringComparison.Ordinal)
        );

        static PanelMark[] Marks(Quote quote, string part, MarkPurpose purpose) =>
            [
                .. quote
                    .Drafting.Patterns[0]
                    .Panels.Single(panel => panel.Part.ToString() == part)
                    .Marks.Where(mark => mark.Purpose == purpose)
                    .OrderBy(mark => mark.From.X),
            ];
    }
}
