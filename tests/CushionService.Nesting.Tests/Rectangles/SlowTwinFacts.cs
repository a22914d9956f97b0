using CsCheck;
using CushionService.Nesting.Audit;
using CushionService.Nesting.Rectangles.Beams;
using CushionService.Nesting.Rectangles.Proofs;
using CushionService.Nesting.Rectangles.Repeats;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Tests.Rectangles;

/// <summary>Every fast structure agrees with the plain way of saying the same.</summary>
public sealed class SlowTwinFacts
{
    private const string Seed = "0000000000001";

    [Fact]
    public void The_sweep_finds_an_overlap_where_comparing_all_pairs_does() =>
        Gen.Select(Gen.Int[0, 20], Gen.Int[0, 20], Gen.Int[1, 6], Gen.Int[1, 6])
            .Array[0, 12]
            .Sample(
                boxes =>
                {
                    GridRectangle[] r = [.. boxes.Select(box => new GridRectangle(box.Item1, box.Item2, box.Item3, box.Item4))];
                    bool slow = r.Where(
                            (a, i) =>
                                r.Skip(i + 1)
                                    .Any(b => a.X < b.X + b.Width && b.X < a.X + a.Width && a.Y < b.Y + b.Length && b.Y < a.Y + a.Length)
                        )
                        .Any();
                    Assert.Equal(slow, RectangleOverlap.Find(r) is not null);
                },
                seed: Seed,
                iter: 3_000
            );

    [Fact]
    public void Candidates_come_in_the_order_of_their_scores_and_equals_as_they_were_added() =>
        Gen.Double[-9, 9]
            .Select(score => Math.Round(score, 1))
            .Array[0, 300]
            .Sample(
                scores =>
                {
                    var candidates = new BeamCandidates(300);
                    candidates.Clear();
                    for (var move = 0; move < scores.Length; move++)
                    {
                        candidates.Add(scores[move], move / 4, move);
                    }

                    candidates.Sort();
                    int[] slow = [.. Enumerable.Range(0, scores.Length).OrderBy(move => scores[move])];
                    Assert.Equal(slow.Select(move => (move / 4, move)), Enumerable.Range(0, candidates.Count).Select(at => candidates[at]));
                },
                seed: Seed,
                iter: 500
            );

    // The largest numbers are beyond those that a double holds exactly.
    [Theory]
    [InlineData(1L << 20)]
    [InlineData(1L << 50)]
    [InlineData(1L << 62)]
    public void A_remainder_is_that_of_a_division_of_whole_numbers(long largest) =>
        Gen.Select(Gen.Long[1, largest], Gen.Long[-largest, largest], Gen.Long[-2, 2])
            .Sample(
                (divisor, number, aside) =>
                {
                    var modulus = new Modulus(divisor);
                    // Beside a multiple of the divisor, a quotient is most easily one too large.
                    foreach (long asked in new[] { number, number / divisor * divisor + Math.Sign(number) * Math.Min(divisor, aside) })
                    {
                        Assert.Equal((long)(((Int128)asked % divisor + divisor) % divisor), modulus.Of(asked));
                    }
                },
                seed: Seed,
                iter: 20_000
            );

    // One word of ways, and several.
    [Theory]
    [InlineData(20)]
    [InlineData(100)]
    public void The_ways_left_fit_a_gap_where_going_through_all_kinds_finds_one(int most) =>
        Gen.Select(Gen.Int[1, 30], Gen.Int[1, 30], Gen.Bool, Gen.Bool)
            .Array[1, most]
            .Sample(
                kinds =>
                {
                    var ways = new BeamWays(
                        [.. kinds.Select(kind => (long)kind.Item1)],
                        [.. kinds.Select(kind => (long)kind.Item2)],
                        [.. kinds.Select(kind => kind.Item3)]
                    );
                    var set = new ulong[ways.Words];
                    ways.WriteAll(set);
                    for (var kind = 0; kind < kinds.Length; kind++)
                    {
                        if (kinds[kind].Item4)
                        {
                            ways.Remove(set, kind);
                        }
                    }

                    (int Across, int Along)[] left =
                    [
                        .. kinds
                            .Where(kind => !kind.Item4)
                            .SelectMany(kind =>
                                kind.Item3 ? new[] { (kind.Item1, kind.Item2), (kind.Item2, kind.Item1) } : [(kind.Item1, kind.Item2)]
                            ),
                    ];
                    for (var extent = 0; extent <= 31; extent++)
                    {
                        for (var room = 0; room <= 31; room += 5)
                        {
                            Assert.Equal(left.Any(way => way.Across <= extent && way.Along <= room), ways.AnyFits(set, extent, room));
                        }
                    }

                    if (left.Length > 0)
                    {
                        Assert.Equal(left.Min(way => way.Across), ways.Narrowest(set));
                    }
                },
                seed: Seed,
                iter: 200
            );

    // Sets of two words, less than are written at once; of four, which are; and of 21.
    [Theory]
    [InlineData(100, 40)]
    [InlineData(200, 80)]
    [InlineData(1_300, 400)]
    public void Subset_sums_are_those_found_by_trying_every_subset(int limit, int most) =>
        Gen.Select(Gen.Int[1, most], Gen.Int[1, most])
            .Array[0, 6]
            .Sample(
                copies =>
                {
                    var sums = new SubsetSums(limit, 1);
                    sums.Recall(0);
                    var slow = new HashSet<int> { 0 };
                    foreach (var (one, other) in copies)
                    {
                        sums.Add(one, other);
                        slow = [.. slow, .. slow.Select(sum => sum + one), .. slow.Select(sum => sum + other)];
                    }

                    for (var length = 0; length <= limit; length++)
                    {
                        Assert.Equal(slow.Where(sum => sum <= length).Max(), sums.Greatest(length));
                    }
                },
                seed: Seed,
                iter: 200
            );

    // Lists of none, of less than four, and of more than the arrays begin with.
    [Fact]
    public void Four_rectangles_compared_at_once_answer_as_one_after_the_other() =>
        Gen.Select(Gen.Int[0, 90], Gen.Int[0, 90], Gen.Int[1, 20], Gen.Int[1, 20])
            .Array[1, 90]
            .Sample(
                boxes =>
                {
                    FreeRectangle[] all =
                    [
                        .. boxes.Select(box => new FreeRectangle(box.Item1, box.Item2, box.Item1 + box.Item3, box.Item2 + box.Item4)),
                    ];
                    var (probe, slow) = (all[^1], all[..^1]);
                    var (list, met) = (new FreeList(), new FreeList());
                    Array.ForEach(slow, free => list.Add(free));

                    Assert.Equal(slow.Any(free => free.Holds(probe)), list.Covers(probe));
                    for (var from = 0; from < slow.Length; from++)
                    {
                        int next = Array.FindIndex(
                            slow,
                            from,
                            free => free.Right - free.Left >= 5 && free.Upper - free.Lower >= 7 && free.Lower <= probe.Lower
                        );
                        Assert.Equal(next, list.NextRoom(from, 5, 7, probe.Lower));
                    }

                    list.MoveMet(probe, met);
                    Assert.Equal(slow.Where(free => free.Meets(probe)), Enumerable.Range(0, met.Count).Select(at => met[at]));
                    Assert.Equal(slow.Where(free => !free.Meets(probe)), Enumerable.Range(0, list.Count).Select(at => list[at]));
                },
                seed: Seed,
                iter: 1_000
            );

    [Fact]
    public void The_index_finds_what_a_scan_over_all_options_finds() =>
        Gen.Select(Gen.Int[0, 6], Gen.Int[0, 6])
            .Array[1, 20]
            .Sample(
                options =>
                {
                    var index = new ExtentIndex([.. options.Select(o => o.Item1)], [.. options.Select(o => o.Item2)]);
                    var present = new HashSet<int>(Enumerable.Range(0, options.Length));
                    for (var gone = 0; gone < options.Length; gone += 2)
                    {
                        for (var first = 0; first < 7; first++)
                        {
                            for (var second = -1; second < 7; second++)
                            {
                                var below = present.Where(o => options[o].CompareTo((first, second)) <= 0).ToArray();
                                int found = index.AtOrBelow(first, second);
                                Assert.Equal(below.Length == 0, found < 0);
                                Assert.True(found < 0 || options[found] == below.Max(o => options[o]));
                            }
                        }

                        index.Remove(gone);
                        present.Remove(gone);
                    }
                },
                seed: Seed,
                iter: 200
            );
}
