using System.Collections.Immutable;
using CushionService.Nesting.Rectangles.Proofs;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Tests.Rectangles;

/// <summary>Boxes that are cut into rectangles: what fits is never ruled out, and what does not for want of area is. On the finest
/// grids, where the products need more than 64 bits, as on coarse ones.</summary>
public sealed class DualFeasibleFacts
{
    [Theory]
    [InlineData(1)]
    [InlineData(1_000)]
    [InlineData(100_000_000)]
    public void What_fits_is_never_ruled_out(long scale)
    {
        var random = new Random(11);
        for (var i = 0; i < 300; i++)
        {
            (long width, long length) = (random.Next(10, 60) * scale, random.Next(10, 60) * scale);
            bool turns = i % 2 == 1;
            ImmutableArray<NestingPiece> pieces =
            [
                .. Cut(width, length, 1 + (i % 7), scale, random)
                    .Select(size => new NestingPiece
                    {
                        Width = size.Width,
                        Length = size.Length,
                        Quantity = 1,
                        Rotations = turns ? Rotations.QuarterTurns : Rotations.None,
                    }),
            ];
            var dual = new DualFeasible(new RectangleSet(pieces, width));

            Assert.Null(dual.RulesOut(length, Budget()));
            Assert.NotNull(dual.RulesOut(length - 1, Budget()));
        }
    }

    // Every pair of functions, one by one, and every kind in each turn that fits.
    [Theory]
    [InlineData(Rotations.None)]
    [InlineData(Rotations.QuarterTurns)]
    public void A_length_is_ruled_out_where_any_pair_of_functions_rules_it_out(Rotations rotations)
    {
        var random = new Random(23);
        var found = 0;
        for (var i = 0; i < 400; i++)
        {
            int width = random.Next(8, 30);
            ImmutableArray<NestingPiece> pieces =
            [
                .. Enumerable
                    .Range(0, random.Next(1, 8))
                    .Select(_ => new NestingPiece
                    {
                        Width = random.Next(1, width + 1),
                        Length = random.Next(1, 20),
                        Quantity = random.Next(1, 4),
                        Rotations = rotations,
                    }),
            ];
            var set = new RectangleSet(pieces, width);
            long shortest = Math.Max(set.LongestAtLeast(), (set.Area + width - 1) / width);
            for (long length = shortest; length < shortest + 4; length++)
            {
                bool ruledOut = AnyPairRulesOut(set, length);
                Assert.Equal(ruledOut, new DualFeasible(set).RulesOut(length, Budget()) is not null);
                found += ruledOut ? 1 : 0;
            }
        }

        Assert.True(found > 50, $"Only {found} lengths are ruled out.");
    }

    private static bool AnyPairRulesOut(RectangleSet set, long length)
    {
        (long Across, long Along)[][] turns =
        [
            .. Enumerable
                .Range(0, set.Kinds)
                .Select(kind =>
                    new (long Across, long Along)[] { (set.Across[kind], set.Along[kind]), (set.Along[kind], set.Across[kind]) }
                        .Take(set.Turns[kind] ? 2 : 1)
                        .Where(turn => turn.Across <= set.Width && turn.Along <= length)
                        .ToArray()
                ),
        ];
        var (across, along) = (Functions(set, set.Width, ofLength: false), Functions(set, length, ofLength: true));
        return turns.Any(fitting => fitting.Length == 0)
            || across.Any(f =>
                along.Any(g =>
                    turns
                        .Select(
                            (fitting, kind) =>
                                set.Count[kind] * fitting.Min(turn => f.Of(turn.Across, set.Width) * g.Of(turn.Along, length))
                        )
                        .Sum()
                    > f.Of(set.Width, set.Width) * g.Of(length, length)
                )
            );
    }

    private static DualFunction[] Functions(RectangleSet set, long whole, bool ofLength)
    {
        var functions = new DualFunction[DualFunctions.MostFor(set.Kinds)];
        return functions[..DualFunctions.For(set, whole, ofLength, functions)];
    }

    private static StepBudget Budget() => new(long.MaxValue, CancellationToken.None);

    // Cuts a box from edge to edge, and one of the parts again, that many times.
    private static List<(long Width, long Length)> Cut(long width, long length, int cuts, long scale, Random random)
    {
        List<(long Width, long Length)> parts = [(width, length)];
        for (var cut = 0; cut < cuts; cut++)
        {
            int at = random.Next(parts.Count);
            (long across, long along) = parts[at];
            bool upright = random.Next(2) == 0;
            long whole = (upright ? across : along) / scale;
            if (whole < 2)
            {
                continue;
            }

            long part = random.Next(1, (int)whole) * scale;
            parts[at] = upright ? (part, along) : (across, part);
            parts.Add(upright ? (across - part, along) : (across, along - part));
        }

        return parts;
    }
}
