using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Tests.Cutting;

/// <summary>A strip of finished length X from n = ⌈X / (Fw − 2s)⌉ pieces: the cuts sum to X + 2sn, closed to a loop or not.</summary>
public sealed class StripPiecingFacts
{
    private static readonly Length Seam = In(0.5m);

    [Theory]
    [InlineData(92, 54, 2, "47", Sources.Derived)]
    [InlineData(62, 54, 2, "32", Sources.Derived)]
    [InlineData(53, 54, 1, "54", Sources.Derived)]
    [InlineData(53.0625, 54, 2, "27.53125", Sources.Derived)]
    [InlineData(65, 54, 2, "33.5", Sources.Derived)]
    [InlineData(160, 54, 4, "41", Sources.Derived)]
    public void Equal_pieces_are_the_share_of_the_strip_and_two_seams(double finished, int width, int pieces, string cut, string source)
    {
        Length strip = In((decimal)finished);
        int n = StripPiecing.PiecesFor(strip, In(width), Seam);

        Assert.Equal(pieces, n);
        Assert.Equal(In(decimal.Parse(cut)), Length.FromNanometres(strip.Nanometres / n) + 2 * Seam);
    }

    [Fact]
    public void Fabric_no_wider_than_two_seams_makes_no_strip() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StripPiecing.PiecesFor(In(10), In(1), Seam));

    [Fact]
    public void A_strip_that_fits_is_not_joined() => Assert.Empty(StripPiecing.Joins(Sides(19, 14, 19), In(54), Seam));

    [Theory]
    [InlineData(19, 24, 19, 54)]
    [InlineData(30, 60, 30, 54)]
    [InlineData(30, 36, 30, 45)]
    [InlineData(12, 40, 12, 54)]
    [InlineData(40, 120, 40, 54)]
    [InlineData(2, 70, 2, 54)]
    [InlineData(5, 100, 5, 36)]
    [InlineData(0.5, 200, 0.5, 30)]
    public void No_join_stands_in_the_middle_third_of_the_front_where_the_fabric_allows_it(
        double left,
        double front,
        double right,
        int width
    )
    {
        // Sources.Practice. It does not allow it where even a third of the front is wider than the fabric.
        ImmutableArray<StripStretch> strip = Sides((decimal)left, (decimal)front, (decimal)right);
        ImmutableArray<Length> joins = StripPiecing.Joins(strip, In(width), Seam);
        Length from = In((decimal)(left + (front / 3))),
            to = In((decimal)(left + (front * 2 / 3)));

        AssertCovers(strip, joins, In(width));
        if (to - from <= In(width) - 2 * Seam)
        {
            Assert.DoesNotContain(joins, join => join > from && join < to);
        }
        else
        {
            Assert.DoesNotContain(joins, join => join == In((decimal)(left + (front / 2))));
        }
    }

    [Theory]
    [InlineData(19, 24, 19, 54)]
    [InlineData(30, 36, 30, 45)]
    [InlineData(30, 40, 30, 54)]
    public void Joins_stand_on_the_sides_away_from_the_corners_where_the_fabric_reaches_round_the_front(
        double left,
        double front,
        double right,
        int width
    )
    {
        // Sources.Practice
        Assert.All(
            StripPiecing.Joins(Sides((decimal)left, (decimal)front, (decimal)right), In(width), Seam),
            join => Assert.True(join <= In((decimal)left - 2) || join >= In((decimal)(left + front) + 2), join.ToString())
        );
    }

    // Sources.Practice: a front is whole, its joins equally far behind both corners as far as the fabric reaches, at the corners where it
    // reaches no further. One side and the front are wider than the fabric here, so that two pieces would be joined in the front.
    [Theory]
    [InlineData(44, "11.53125", "62.46875")]
    [InlineData(49, "15", "64")]
    public void A_front_stays_whole_for_one_join_more(int front, string first, string second) =>
        Assert.Equal(
            [In(decimal.Parse(first)), In(decimal.Parse(second))],
            StripPiecing.Joins(Sides(15, front, 15), In(51.9375m), Seam).AsEnumerable()
        );

    [Theory]
    [InlineData(19, 24, 19, 54, 53)] // 24 × 22 × 4 with returns of 3: 53 in in one piece, 9 in next to the zipper's section.
    [InlineData(26, 24, 26, 60, 59)]
    [InlineData(15, 24, 15, 54, 51)] // 54 in: the patch at the closure is no shorter than 3 in.
    public void The_one_join_lies_as_near_to_the_closure_s_end_as_the_fabric_lets_it(int left, int front, int right, int width, int join) =>
        Assert.Equal([In(join)], StripPiecing.Joins(Sides(left, front, right), In(width), Seam).AsEnumerable());

    [Theory]
    [InlineData(72, 54, "9.5", "62.5")]
    [InlineData(72, 45, "14", "58")]
    [InlineData(60, 54, "8.8333333", "51.1666667")] // no side piece narrower than a sixth of the breadth
    public void A_front_longer_than_the_fabric_is_joined_in_a_pair_symmetric_about_its_middle(
        int front,
        int width,
        string first,
        string second
    )
    {
        Length[] joins = [.. StripPiecing.Joins([new(In(front), true)], In(width), Seam)];

        Assert.Equal([first, second], joins.Select(join => decimal.Round(join.In(LengthUnit.Inch), 7).ToString()));
    }

    [Fact]
    public void A_front_is_joined_under_its_face_s_seams()
    {
        ImmutableArray<Length> underFace = [In(12), In(60)];

        Assert.Equal([In(12), In(60)], StripPiecing.Joins([new(In(72), true)], In(54), Seam, underFace).AsEnumerable());
        Assert.Equal([In(32), In(80)], StripPiecing.Joins(Sides(20, 72, 20), In(54), Seam, underFace).AsEnumerable());
        // So is that of an ell, which is split at its inside corner, off the middle: the seam of the face runs on down the front.
        Assert.Equal([In(30)], StripPiecing.Joins([new(In(72), true)], In(54), Seam, [In(30)]).AsEnumerable());
        // What leaves a piece too long is not copied.
        Assert.Equal([In(9.5m), In(62.5m)], StripPiecing.Joins([new(In(72), true)], In(54), Seam, [In(10)]).AsEnumerable());
    }

    [Fact]
    public void A_joined_front_is_the_same_on_both_sides_for_any_size_and_fabric()
    {
        var random = new Random(14);
        for (var i = 0; i < 2000; i++)
        {
            Length front = In(random.Next(80, 1900) / 8m),
                width = In(random.Next(60, 960) / 8m),
                side = In(random.Next(1, 400) / 8m);
            ImmutableArray<Length> joins = StripPiecing.Joins([new(side, false), new(front, true), new(side, false)], width, Seam);
            Length[] onFront = [.. joins.Where(join => join > side && join < side + front)];

            Assert.All(onFront.Zip(onFront.Reverse()), pair => Assert.Equal(2 * side + front, pair.First + pair.Second));
            Assert.True(onFront.Length % 2 == 0, $"{front} on {width}");
        }
    }

    [Theory]
    // The section of a zipper round three sides of an ell of 50 × 40 whose notch is 30 × 20: no piece is longer than 53 in.
    [InlineData("20 30 20 20 40", 54, "50 90", Sources.Practice)]
    // Round three sides of 48 × 20: two of 44 would part the back in its middle, and no two reach the corners.
    [InlineData("20 48 20", 54, "44", Sources.Practice)]
    [InlineData("20 24 20", 54, "20", Sources.Practice)]
    // A side longer than the fabric leaves no corners to join at.
    [InlineData("10 60 10", 36, "26.6666666 53.3333333", Sources.Practice)]
    public void A_strip_without_a_front_is_joined_at_its_corners_where_they_reach(string sides, int width, string expected, string source)
    {
        ImmutableArray<Length> joins = StripPiecing.Joins(
            [.. sides.Split(' ').Select(side => new StripStretch(In(decimal.Parse(side)), false))],
            In(width),
            Seam
        );

        Assert.Equal(
            expected.Split(' ').Select(decimal.Parse),
            joins.Select(join => Math.Floor(join.In(LengthUnit.Inch) * 10_000_000) / 10_000_000)
        );
        Assert.NotEmpty(source);
    }

    [Fact]
    public void Any_strip_on_any_fabric_is_covered_without_a_piece_too_long()
    {
        var random = new Random(92);
        for (var i = 0; i < 3000; i++)
        {
            Length width = In(random.Next(20, 960) / 8m);
            ImmutableArray<StripStretch> strip = Sides(random.Next(1, 800) / 8m, random.Next(16, 1600) / 8m, random.Next(1, 800) / 8m);

            AssertCovers(strip, StripPiecing.Joins(strip, width, Seam), width);
        }
    }

    private static void AssertCovers(ImmutableArray<StripStretch> strip, ImmutableArray<Length> joins, Length width)
    {
        Length finished = strip.Aggregate(Length.Zero, (sum, stretch) => sum + stretch.Length);
        Length[] ends = [Length.Zero, .. joins, finished];
        Length[] cuts = [.. ends.Zip(ends.Skip(1), (from, to) => to - from + 2 * Seam)];

        Assert.All(cuts, cut => Assert.InRange(cut.Nanometres, (2 * Seam).Nanometres + 1, width.Nanometres));
        Assert.Equal(finished + 2L * cuts.Length * Seam, cuts.Aggregate((a, b) => a + b));
    }

    private static ImmutableArray<StripStretch> Sides(decimal left, decimal front, decimal right) =>
        [new(In(left), false), new(In(front), true), new(In(right), false)];
}
