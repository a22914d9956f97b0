using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Closures;

namespace CushionService.Engine.Tests.Specifications;

/// <summary>Two hemmed strips that overlap: each is cut (T + o)/2 + s + 2f high, with seams s of 1/2 in here.</summary>
public sealed class HookAndLoopFacts
{
    [Theory]
    [InlineData(3, 0.75, 0.75, 3.875, Sources.Derived)]
    [InlineData(4, 1, 1, 5, Sources.Derived)]
    [InlineData(3, 1, 1, 4.5, Sources.Derived)]
    [InlineData(5, 1, 1, 5.5, Sources.Derived)]
    [InlineData(2, 0.5, 1, 3, Sources.Practice)]
    [InlineData(4, 0.5, 1, 4, Sources.Practice)]
    public void A_strip_is_cut_half_of_height_and_overlap_and_its_allowances(
        double height,
        double fold,
        double overlap,
        double cut,
        string source
    )
    {
        Length visible = HookAndLoopClosure.VisibleHeight(In((decimal)height), In((decimal)overlap));

        Assert.Equal(In((decimal)cut), visible + In(0.5m) + 2 * In((decimal)fold));
    }

    [Theory]
    [InlineData(3, 0.75, 1, Sources.Derived)]
    [InlineData(4, 1, 1, Sources.Derived)]
    [InlineData(3, 1, 0, Sources.Derived)]
    [InlineData(2, 1, -1, Sources.Derived)]
    [InlineData(5, 1, 2, Sources.Derived)]
    [InlineData(2, 0.5, 1, Sources.Practice)]
    public void Strips_cut_as_high_as_the_sides_overlap_by_what_is_left(double height, double fold, double overlap, string source) =>
        Assert.Equal(In((decimal)overlap), HookAndLoopClosure.OverlapAsSides(In((decimal)height), In(0.5m), In((decimal)fold)));

    [Theory]
    [InlineData(1, 4)]
    [InlineData(0.75, 2.75)]
    [InlineData(0.625, 2.125)]
    [InlineData(0.5, 1.5)]
    public void The_shortcut_lays_hem_exactly_on_hem_only_at_one_height(double fold, double height)
    {
        // Sources.Derived: C = T + 2s with an overlap of one fold only where T = 5f − 2s.
        Assert.Equal(In((decimal)fold), HookAndLoopClosure.OverlapAsSides(In((decimal)height), In(0.5m), In((decimal)fold)));
    }

    [Fact]
    public void An_overlap_holds_the_tape_and_an_eighth_at_each_edge() =>
        Assert.Equal(In(1), HookAndLoopClosure.NarrowestOverlap(In(0.75m), In(0.125m)));
}
