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
