using CushionService.Nesting.Rectangles.Beams;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Tests.Rectangles;

public sealed class BeamFacts
{
    private const int States = 100;
    private const long Optimum = 20;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_beam_finds_the_optimum_of_C1P1_of_Hopper_and_Turton_along_the_box_and_across_it(bool sideways)
    {
        var set = Set();
        var layout = new RectangleLayout(set);
        var random = new Xorshift(1);
        var beam = new BeamSearch(set, States, Budget());
        Assert.Contains(BeamGuide.InTurn, guide => beam.Run(States, Optimum, sideways, guide, ref random, layout));

        // The rectangles fill the box: every unit square lies in just one of them.
        var covered = new int[set.Width, Optimum];
        for (var copy = 0; copy < set.Copies; copy++)
        {
            for (long at = 0; at < set.Across[set.KindOf[copy]] * set.Along[set.KindOf[copy]]; at++)
            {
                covered[layout[copy].X + at % set.Across[set.KindOf[copy]], layout[copy].Y + at / set.Across[set.KindOf[copy]]]++;
            }
        }

        Assert.All(covered.Cast<int>(), times => Assert.Equal(1, times));
    }

    [Fact]
    public void A_box_smaller_than_its_rectangles_holds_no_layout()
    {
        var set = Set();
        var layout = new RectangleLayout(set);
        var random = new Xorshift(1);
        Assert.False(new BeamSearch(set, States, Budget()).Run(States, Optimum - 1, false, BeamGuide.InTurn[0], ref random, layout));
    }

    [Fact]
    public void A_beam_allocates_nothing_while_it_runs()
    {
        var set = Set();
        var layout = new RectangleLayout(set);
        var random = new Xorshift(1);
        var beam = new BeamSearch(set, States, Budget());
        beam.Run(States, Optimum, false, BeamGuide.InTurn[0], ref random, layout);
        Assert.Equal(
            0,
            Allocation.Least(() =>
            {
                for (var run = 0; run < 10; run++)
                {
                    beam.Run(States, Optimum + run, run % 2 == 1, BeamGuide.InTurn[run % BeamGuide.InTurn.Length], ref random, layout);
                }
            })
        );
    }

    private static RectangleSet Set() => new(PublishedInstances.C1P1.Pieces, PublishedInstances.C1P1.Width);

    private static StepBudget Budget() => new(long.MaxValue, CancellationToken.None);
}
