using CushionService.Nesting.Rectangles.PerfectBoxes;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Tests.Rectangles;

/// <summary>The search for boxes without waste, on squares that are cut from edge to edge, and on pinwheels, which no such cuts
/// undo.</summary>
public sealed class PerfectBoxFacts
{
    private const long Plenty = 3_000_000;

    [Theory]
    [InlineData(Rotations.None)]
    [InlineData(Rotations.QuarterTurns)]
    public void Squares_cut_into_up_to_twenty_pieces_are_put_together_again(Rotations rotations)
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var random = new Random(seed);
            int side = random.Next(100, 300);
            var set = Set(Cut(side, random.Next(8, 20), random), side, rotations);
            var search = new PerfectBoxRestarts(set, Budget());
            Assert.True(search.IsWorthwhile(side));
            Assert.True(search.Run(side, Plenty), $"square {seed} of {side}");
            Assert.Equal(side, search.Layout.End());
            AssertCovered(set, search.Layout, side);
        }
    }

    [Fact]
    public void A_pinwheel_of_five_is_put_together_again()
    {
        var set = Set([(6, 4), (4, 7), (7, 3), (3, 6), (3, 3)], 10, Rotations.None);
        var search = new PerfectBoxRestarts(set, Budget());
        Assert.True(search.Run(10, Plenty));
        AssertCovered(set, search.Layout, 10);
    }

    [Fact]
    public void A_box_with_more_than_a_little_to_lose_is_left_to_other_searches()
    {
        var set = Set([(6, 4), (4, 7), (7, 3), (3, 6), (3, 3)], 10, Rotations.None);
        var search = new PerfectBoxRestarts(set, Budget());
        Assert.True(search.IsWorthwhile(10));
        Assert.False(search.IsWorthwhile(11));
        Assert.False(search.IsWorthwhile(9));
    }

    [Fact]
    public void What_cannot_fill_the_box_is_not_found()
    {
        // The area fits, but two pieces of 6 by 6 do not go into 10 by 10.
        var set = Set([(6, 6), (6, 6), (4, 7)], 10, Rotations.None);
        Assert.False(new PerfectBoxRestarts(set, Budget()).Run(10, 200_000));
    }

    [Fact]
    public void A_search_gives_the_same_layout_and_the_same_steps_each_time()
    {
        var set = Set(Cut(200, 18, new Random(3)), 200, Rotations.None);
        var (one, other) = (Budget(), Budget());
        var (first, second) = (new PerfectBoxRestarts(set, one), new PerfectBoxRestarts(set, other));
        Assert.Equal(first.Run(200, Plenty), second.Run(200, Plenty));
        Assert.Equal(one.Spent, other.Spent);
        Assert.All(Enumerable.Range(0, set.Copies), copy => Assert.Equal(first.Layout[copy], second.Layout[copy]));
    }

    [Fact]
    public void A_search_that_is_cancelled_stops()
    {
        var set = Set(Cut(390, 60, new Random(7)), 390, Rotations.None);
        using var caller = new CancellationTokenSource();
        caller.Cancel();
        var search = new PerfectBoxRestarts(set, new StepBudget(long.MaxValue, caller.Token));
        Assert.Throws<OperationCanceledException>(() => search.Run(390, long.MaxValue / 2));
    }

    private static StepBudget Budget() => new(long.MaxValue, CancellationToken.None);

    private static RectangleSet Set(IEnumerable<(int Width, int Length)> sizes, int width, Rotations rotations) =>
        new(
            [
                .. sizes.Select(size => new NestingPiece
                {
                    Width = size.Width,
                    Length = size.Length,
                    Rotations = rotations,
                }),
            ],
            width
        );

    private static List<(int Width, int Length)> Cut(int side, int count, Random random)
    {
        List<(int Width, int Length)> parts = [(side, side)];
        while (parts.Count < count)
        {
            int at = random.Next(parts.Count);
            var (width, length) = parts[at];
            bool upright = random.Next(2) == 0;
            int whole = upright ? width : length;
            if (whole >= 4)
            {
                int first = random.Next(2, whole - 1);
                parts[at] = upright ? (first, length) : (width, first);
                parts.Add(upright ? (width - first, length) : (width, length - first));
            }
        }

        return parts;
    }

    private static void AssertCovered(RectangleSet set, RectangleLayout layout, int side)
    {
        var covered = new int[side, side];
        for (var copy = 0; copy < set.Copies; copy++)
        {
            for (long x = 0; x < layout.Across(copy); x++)
            {
                for (long y = 0; y < layout.Along(copy); y++)
                {
                    covered[layout[copy].X + x, layout[copy].Y + y]++;
                }
            }
        }

        Assert.All(covered.Cast<int>(), times => Assert.Equal(1, times));
    }
}
