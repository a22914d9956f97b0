using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Tests.Quoting;

/// <summary>Outlines that are too narrow for their seam allowance cannot be cut, and are refused with what would help (general
/// geometry).</summary>
public sealed class CutOutlineFacts
{
    [Theory]
    // The notch of a U is as wide as the allowances at both its sides: its cut lines meet.
    [InlineData(1, 0.5, false)]
    [InlineData(1.5, 0.75, false)]
    [InlineData(1, 1, false)]
    [InlineData(1.125, 0.5, true)]
    [InlineData(4, 1, true)]
    public void A_notch_must_be_wider_than_two_seam_allowances(double notch, double allowance, bool allowed)
    {
        CushionSpecification cushion = KnifeEdge(1, 1, HandSewn) with
        {
            Outline = new UOutline(In(12), In(10), In((decimal)notch), In(3)),
            SeamAllowance = In((decimal)allowance),
        };
        var drafting = Drafting.Of(Order(cushion));

        Assert.Equal(allowed ? [] : new[] { "not-combinable" }, drafting.Violations.Select(violation => violation.Code));
        if (allowed)
        {
            Assert.NotEmpty(Quote(Order(cushion)).Steps);
        }
        else
        {
            Assert.Equal(
                "The cut lines of seat/top cross: a part of its outline is too narrow for a seam allowance on both sides. "
                    + "Choose a narrower seam allowance or a wider outline.",
                drafting.Violations[0].Detail.ToString()
            );
        }
    }

    [Theory]
    [InlineData(14, 0.5, true)]
    [InlineData(14, 2, true)]
    [InlineData(6, 2, false)]
    public void The_halves_of_a_slim_oval_take_no_wide_allowance(int depth, double allowance, bool allowed)
    {
        CushionSpecification cushion = KnifeEdge(1, 1, new EnvelopeClosure(Side.Bottom, In(0.5m), In(2))) with
        {
            Outline = new OvalOutline(In(30), In(depth)),
            SeamAllowance = In((decimal)allowance),
        };

        Assert.Equal(allowed, Drafting.Of(Order(cushion)).Violations.IsEmpty);
    }
}
