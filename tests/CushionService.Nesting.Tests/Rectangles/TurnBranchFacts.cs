using CushionService.Nesting.Rectangles.Proofs;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Tests.Rectangles;

/// <summary>Branching on turns against a search that turns each copy as it lays it.</summary>
public sealed class TurnBranchFacts
{
    private const int Cases = 120;
    private const long Plenty = 50_000_000;

    [Fact]
    public void Branching_on_turns_decides_as_turning_each_copy_does()
    {
        var random = new Random(31);
        var (found, impossible) = (0, 0);
        for (var index = 0; index < Cases; index++)
        {
            var set = Set(random);
            var budget = new StepBudget(long.MaxValue, CancellationToken.None);
            long length = (set.Area + set.Width - 1) / set.Width + random.Next(3);
            var grid = new BoxGrid(set);
            if (Array.IndexOf(set.Turns, true) < 0 || !grid.EachFits(grid.Height(length)!.Value))
            {
                continue;
            }

            int[] kinds = [.. Enumerable.Range(0, set.Kinds)];
            var expected = new BoxPart(grid, kinds, grid.Height(length)!.Value, true, 16, budget).Run(Plenty);
            var layout = new RectangleLayout(set);
            var outcome = new TurnBranches(set, length, budget).Run(Plenty, layout);
            Assert.NotEqual(BoxOutcome.Unknown, expected);
            Assert.True(expected == outcome, $"case {index}: {outcome}, expected {expected}");
            impossible += outcome == BoxOutcome.Impossible ? 1 : 0;
            if (outcome == BoxOutcome.Found)
            {
                found++;
                AssertNoOverlap(set, length, layout);
            }
        }

        Assert.True(found >= 20 && impossible >= 20, $"{found} found, {impossible} impossible");
    }

    private static RectangleSet Set(Random random)
    {
        int width = random.Next(8, 24);
        return new RectangleSet(
            [
                .. Enumerable
                    .Range(0, random.Next(2, 5))
                    .Select(_ => new NestingPiece
                    {
                        Width = random.Next(2, width),
                        Length = random.Next(2, 12),
                        Quantity = random.Next(1, 4),
                        Rotations = Rotations.QuarterTurns,
                    }),
            ],
            width
        );
    }

    private static void AssertNoOverlap(RectangleSet set, long length, RectangleLayout layout)
    {
        var covered = new bool[set.Width, length];
        for (var copy = 0; copy < set.Copies; copy++)
        {
            var (across, along) = (layout.Across(copy), layout.Along(copy));
            for (long at = 0; at < across * along; at++)
            {
                ref bool square = ref covered[layout[copy].X + at % across, layout[copy].Y + at / across];
                Assert.False(square);
                square = true;
            }
        }
    }
}
