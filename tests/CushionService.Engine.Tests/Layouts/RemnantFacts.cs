using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Tests.Quoting;

namespace CushionService.Engine.Tests.Layouts;

/// <summary>What is left of the length that is sold.</summary>
public sealed class RemnantFacts
{
    // By hand: two faces of 19 x 19 lie side by side on 54 in; 19 in is sold as 5/8 yd = 22.5 in. Beside them 16 in are free along the
    // whole length, beyond them 3.5 in across the whole width: 54 x 22.5 = 1215 sq in less 722 is 493, 40.58 % (general mathematics).
    [Fact]
    public void Two_faces_leave_a_strip_beside_them_and_one_beyond_them()
    {
        Yardage yardage = Trade.Quote(Order(KnifeEdge(18, 18, HandSewn))).Yardages[0];

        Assert.Equal(
            [new Remnant(In(38), In(0), In(16), In(22.5m)), new Remnant(In(0), In(19), In(54), In(3.5m))],
            Remnants.Of(yardage, In(1)).AsEnumerable()
        );
        Assert.Equal(0.4058, yardage.Waste, 4);
    }

    // Squaring takes 2 in, the wash a tenth: of 27 in bought (19 / 0.9 + 2 = 23.1, up to 6/8 yd) 22.5 in are laid on, down to a nanometre.
    [Fact]
    public void What_squares_the_ends_and_is_lost_to_the_wash_is_no_remnant()
    {
        Yardage yardage = Trade
            .Quote(Order(KnifeEdge(18, 18, HandSewn), Fabric with { LengthShrinkage = Percent(10), Squaring = In(2) }))
            .Yardages[0];

        Assert.Equal(In(27), yardage.Sold);
        Assert.Equal(In(22.5m), Remnants.Of(yardage, In(1))[0].Length);
    }

    // Against every rectangle between edges of pieces, tried one by one.
    [Fact]
    public void Remnants_of_generated_orders_are_all_the_maximal_empty_rectangles()
    {
        int compared = 0;
        for (int number = 0; number < 150; number++)
        {
            Drafting drafting = Drafting.Of(GeneratedOrders.Order(number));
            if (!drafting.Violations.IsEmpty)
            {
                continue;
            }

            foreach (
                Yardage yardage in QuotePipeline.LayOut(drafting, CancellationToken.None).Where(one => one.Layout.Placements.Length < 14)
            )
            {
                Length width = yardage.Layout.Fabric.UsableWidth,
                    length = FabricSale.Left(yardage.Layout.Fabric, yardage.Sold, yardage.Layout.Start);
                var every = Every(yardage.Layout.Placements, width, length).ToHashSet();
                var found = Remnants.Of(yardage, In(1));
                Assert.True(
                    found.All(every.Contains) && found.Length == Math.Min(every.Count, 20),
                    $"order {number}: {string.Join(", ", found.Except(every))} {every.Count} {found.Length}"
                );
                Assert.True(found.Zip(found.Skip(1)).All(pair => pair.First.Length >= pair.Second.Length), $"order {number}");
                Assert.InRange(yardage.Waste, 0, 1);
                compared++;
            }
        }

        Assert.True(compared > 50, $"{compared}");
    }

    private static IEnumerable<Remnant> Every(IReadOnlyList<LaidPiece> laid, Length width, Length length)
    {
        Length[] xs = [.. laid.SelectMany(piece => new[] { piece.X, piece.X + piece.Width }).Append(Length.Zero).Append(width).Distinct()],
            ys = [.. laid.SelectMany(piece => new[] { piece.Y, piece.Y + piece.Length }).Append(Length.Zero).Append(length).Distinct()];
        Remnant[] empty =
        [
            .. from left in xs
            from right in xs
            where right - left >= In(1)
            from start in ys
            from end in ys
            where end - start >= In(1) && end <= length
            let one = new Remnant(left, start, right - left, end - start)
            where !laid.Any(piece => left < piece.X + piece.Width && piece.X < right && start < piece.Y + piece.Length && piece.Y < end)
            select one,
        ];
        return empty.Where(one =>
            !empty.Any(other =>
                other != one
                && other.X <= one.X
                && other.Y <= one.Y
                && other.X + other.Width >= one.X + one.Width
                && other.Y + other.Length >= one.Y + one.Length
            )
        );
    }
}
