using CushionService.Nesting.Rectangles.Beams;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Tests.Rectangles;

public sealed class BeamFacts
{
    private const int States = 100;
    private const long Optimum = 20;

    [Theory]
    [InlineData(false, false)]
    [InlineData(false, true)]
    [InlineData(true, false)]
    [InlineData(true, true)]
    public void A_beam_finds_the_optimum_of_C1P1_of_Hopper_and_Turton_along_the_box_and_across_it(bool sideways, bool looksAhead)
    {
        var set = Set();
        var layout = new RectangleLayout(set);
        var random = new Xorshift(1);
        var beam = new BeamSearch(new BeamKinds(set), States, 2 * Optimum, Budget());
        Assert.Contains(BeamGuide.InTurn, guide => beam.Run(States, Optimum, sideways, looksAhead, guide, ref random, layout));

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
        Assert.False(
            new BeamSearch(new BeamKinds(set), States, 2 * Optimum, Budget()).Run(
                States,
                Optimum - 1,
                false,
                true,
                BeamGuide.InTurn[0],
                ref random,
                layout
            )
        );
    }

    [Fact]
    public void A_beam_allocates_nothing_while_it_runs()
    {
        var set = Set();
        var layout = new RectangleLayout(set);
        var random = new Xorshift(1);
        var beam = new BeamSearch(new BeamKinds(set), States, 2 * Optimum, Budget());
        beam.Run(States, Optimum, false, true, BeamGuide.InTurn[0], ref random, layout);
        Assert.Equal(
            0,
            Allocation.Least(() =>
            {
                for (var run = 0; run < 10; run++)
                {
                    beam.Run(
                        States,
                        Optimum + run,
                        run % 2 == 1,
                        run % 3 != 0,
                        BeamGuide.InTurn[run % BeamGuide.InTurn.Length],
                        ref random,
                        layout
                    );
                }
            })
        );
    }

    [Fact]
    public void A_box_whose_rows_the_copies_cannot_fill_loses_the_rest_of_each_row()
    {
        // 4 and 3 wide, both 1 high: at most 7 of a row of 10 are filled.
        var pieces = new[] { 4, 3 }.Select(width => new NestingPiece { Width = width, Length = 1 });
        var kinds = new BeamKinds(new RectangleSet([.. pieces], 10));
        var layer = new BeamLayer(States, 2, 2, kinds.Ways(sideways: false).Words, new BeamSums(kinds, Optimum, States));
        layer.Begin(kinds, 10, sideways: false, looksAhead: true);
        Assert.Equal(3 * 2, new BeamLosses(2).OfRows(layer, 0, 2));
        BeamLosses.RaiseColumns(layer, 0, 3);
        Assert.Equal(10, layer.Waste[0]);
    }

    private static RectangleSet Set() => new(PublishedInstances.C1P1.Pieces, PublishedInstances.C1P1.Width);

    private static StepBudget Budget() => new(long.MaxValue, CancellationToken.None);
}
