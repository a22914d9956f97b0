using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Patterns;

/// <summary>The mitres of a double flange (common practice, no source).</summary>
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
}
