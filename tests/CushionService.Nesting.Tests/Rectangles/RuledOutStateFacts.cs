using CushionService.Nesting.Rectangles.Proofs;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Tests.Rectangles;

/// <summary>A proof by exhaustion remembers what it ruled out. It must never take one state for another, whatever their hashes.</summary>
public sealed class RuledOutStateFacts
{
    // No bit of a hash counts: every state looks in the same slot.
    private const ulong AllCollide = 0;
    private const long Plenty = 20_000_000;

    [Fact]
    public void States_whose_hashes_collide_are_told_apart()
    {
        var random = new Random(7);
        for (var round = 0; round < 2_000; round++)
        {
            int[] left = [3, 2, 5];
            var states = new RuledOutStates(4_000, 900, left, 2, 4, AllCollide);
            var skylines = new BoxSkylines(16, 2, 4_000, 900);
            int segments = Draw(random, skylines, 0);
            Assert.False(states.Holds(0, skylines, 0, segments, left));
            states.Add(0);
            Assert.True(states.Holds(1, skylines, 0, segments, left));

            // One unit of one end or height, or one copy, makes another state.
            int changed = random.Next(2 * segments + left.Length - 1);
            if (changed < segments)
            {
                skylines.Y[changed]++;
            }
            else if (changed < 2 * segments - 1)
            {
                skylines.X[changed - segments + 1]++;
            }
            else
            {
                left[changed - 2 * segments + 1]--;
            }

            Assert.False(states.Holds(1, skylines, 0, segments, left), $"round {round}: change {changed} of {segments} segments");
        }
    }

    [Fact]
    public void A_state_is_forgotten_or_found_but_never_mixed_up_when_the_memory_runs_over()
    {
        var random = new Random(11);
        var states = new RuledOutStates(500, 500, [9], 1, 2);
        var skylines = new BoxSkylines(16, 1, 500, 500);
        var added = new HashSet<string>();
        var found = 0;
        for (var round = 0; round < 20_000; round++)
        {
            int segments = 1 + random.Next(3);
            for (var segment = 0; segment < segments; segment++)
            {
                (skylines.X[segment], skylines.Y[segment]) = (10 * segment, random.Next(4));
            }

            int[] left = [random.Next(3)];
            string name = $"{string.Join(' ', skylines.Y[..segments])} | {left[0]}";
            if (states.Holds(0, skylines, 0, segments, left))
            {
                found++;
                Assert.Contains(name, added);
            }

            states.Add(0);
            added.Add(name);
        }

        Assert.InRange(found, 100, 19_000);
    }

    [Fact]
    public void A_search_whose_states_all_collide_decides_as_one_without_memory_does()
    {
        var random = new Random(23);
        var (found, impossible) = (0, 0);
        for (var index = 0; index < 200; index++)
        {
            var box = Box(random);
            var outcome = Decide(box, 10, AllCollide);
            Assert.NotEqual(BoxOutcome.Unknown, outcome);
            Assert.True(outcome == Decide(box, 16, ulong.MaxValue), $"box {index}");
            Assert.True(outcome == Plain(box), $"box {index}: {outcome}, but cell by cell it is not so");
            (found, impossible) = outcome == BoxOutcome.Found ? (found + 1, impossible) : (found, impossible + 1);
        }

        Assert.True(found >= 20 && impossible >= 20, $"{found} found, {impossible} impossible");
    }

    [Fact]
    public void A_box_that_was_cut_into_pieces_is_put_together_again_though_all_states_collide()
    {
        // A box without waste is found only after many vain tries, each of which is remembered.
        var random = new Random(41);
        for (var index = 0; index < 300; index++)
        {
            var box = CutUp(random.Next(12, 25), random.Next(12, 25), random.Next(6, 11), random);
            Assert.True(Decide(box, 10, AllCollide) == BoxOutcome.Found, $"box {index}");
        }
    }

    private static BoxOutcome Decide(BoxContents box, int log, ulong hashMask)
    {
        var budget = new StepBudget(long.MaxValue, CancellationToken.None);
        var search = new BoxSearch(box, AxisWeights.Of(box, true), AxisWeights.Of(box.Sideways, true), log, budget, hashMask);
        return search.Run(Plenty);
    }

    /// <summary>The slow twin: lays each copy at every place of a grid of cells, largest first.</summary>
    private static BoxOutcome Plain(BoxContents box)
    {
        int[] kinds = [.. Enumerable.Range(0, box.Count.Length).SelectMany(kind => Enumerable.Repeat(kind, box.Count[kind]))];
        return Lay(new int[box.Height], kinds, 0) ? BoxOutcome.Found : BoxOutcome.Impossible;

        // Each row is a set of bits, one for each cell that is taken.
        bool Lay(int[] rows, int[] copies, int copy)
        {
            if (copy == copies.Length)
            {
                return true;
            }

            var (across, along) = box.Size(copies[copy], false);
            for (int place = 0; place < (box.Width - across + 1) * (box.Height - along + 1); place++)
            {
                var (x, y) = (place % (box.Width - across + 1), place / (box.Width - across + 1));
                int bits = ((1 << across) - 1) << x;
                if (Array.TrueForAll(rows[y..(y + along)], row => (row & bits) == 0))
                {
                    int[] next = [.. rows.Select((row, at) => at >= y && at < y + along ? row | bits : row)];
                    if (Lay(next, copies, copy + 1))
                    {
                        return true;
                    }
                }
            }

            return false;
        }
    }

    /// <summary>A box with little room to spare, in which nothing may turn.</summary>
    private static BoxContents Box(Random random)
    {
        var (width, kinds) = (random.Next(4, 8), random.Next(2, 4));
        int[] across = [.. Enumerable.Range(0, kinds).Select(_ => random.Next(1, width))];
        int[] along = [.. Enumerable.Range(0, kinds).Select(_ => random.Next(1, 5))];
        int[] count = [.. Enumerable.Range(0, kinds).Select(_ => random.Next(1, 3))];
        int area = Enumerable.Range(0, kinds).Sum(kind => across[kind] * along[kind] * count[kind]);
        return new BoxContents(across, along, new bool[kinds], count, width, Math.Max(along.Max(), (area + width - 1) / width));
    }

    /// <summary>A box cut from edge to edge, and one of the parts again, a number of times.</summary>
    private static BoxContents CutUp(int width, int height, int cuts, Random random)
    {
        List<(int Across, int Along)> parts = [(width, height)];
        for (var cut = 0; cut < cuts; cut++)
        {
            int at = random.Next(parts.Count);
            var (across, along) = parts[at];
            bool lengthwise = random.Next(2) == 0;
            if ((lengthwise ? across : along) > 1)
            {
                int first = random.Next(1, lengthwise ? across : along);
                parts[at] = lengthwise ? (first, along) : (across, first);
                parts.Add(lengthwise ? (across - first, along) : (across, along - first));
            }
        }

        // Equal parts are copies of one kind.
        var kinds = parts.GroupBy(part => part).ToList();
        return new BoxContents(
            [.. kinds.Select(kind => kind.Key.Across)],
            [.. kinds.Select(kind => kind.Key.Along)],
            new bool[kinds.Count],
            [.. kinds.Select(kind => kind.Count())],
            width,
            height
        );
    }

    /// <summary>A skyline within 3 000 by 800.</summary>
    private static int Draw(Random random, BoxSkylines skylines, int at)
    {
        int segments = random.Next(1, 9);
        for (var segment = 0; segment < segments; segment++)
        {
            (skylines.X[at + segment], skylines.Y[at + segment]) = (
                300 * segment + (segment == 0 ? 0 : random.Next(200)),
                random.Next(800)
            );
        }

        return segments;
    }
}
