using CushionService.Nesting.Rectangles.PerfectBoxes;

namespace CushionService.Nesting.Tests.Rectangles;

public sealed class SumCountFacts
{
    private const int Limit = 150;

    [Fact]
    public void As_copies_are_taken_out_the_greatest_sums_are_those_of_a_list_of_all_sums()
    {
        var random = new Random(7);
        for (var order = 0; order < 40; order++)
        {
            int kinds = random.Next(1, 9);
            int[] extent = [.. Enumerable.Range(0, kinds).Select(_ => random.Next(1, 60))];
            int[] other = [.. extent.Select(one => random.Next(2) == 0 ? one : random.Next(1, 200))];
            int[] left = [.. extent.Select(_ => random.Next(1, 4))];
            var sums = new SumCounts(extent, other, left, Limit);
            for (var row = 0; left.Sum() > 0; row++)
            {
                var all = new SortedSet<int> { 0 };
                for (var kind = 0; kind < kinds; kind++)
                {
                    for (var copy = 0; copy < left[kind]; copy++)
                    {
                        all.UnionWith([.. all.SelectMany(sum => new[] { sum + extent[kind], sum + other[kind] })]);
                    }
                }

                for (var length = 0; length <= Limit; length++)
                {
                    Assert.Equal(all.GetViewBetween(0, length).Max, sums.Greatest(row, length));
                }

                int taken = random.Next(kinds);
                for (; left[taken] == 0; taken = (taken + 1) % kinds) { }

                left[taken]--;
                sums.Write(row + 1, taken);
            }
        }
    }
}
