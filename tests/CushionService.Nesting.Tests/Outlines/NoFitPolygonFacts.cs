using CsCheck;
using CushionService.Nesting.Outlines.NoFit;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Tests.Outlines;

/// <summary>The fast path (slices of the no-fit polygon) against its slow twin (the exact test, offset by offset).</summary>
public sealed class NoFitPolygonFacts
{
    [Fact]
    public void Every_overlap_has_a_depth_and_what_is_apart_has_none() =>
        Gen.Select(Shapes.GenPiece, Shapes.GenPiece)
            .Sample(
                (lying, moving) =>
                {
                    var (one, other) = (OutlineShape.Of(lying, 0), OutlineShape.Of(moving, 90));
                    var book = new ShapeBook(CancellationToken.None);
                    var (first, second) = (book.Add(one), book.Add(other));
                    book.Close();
                    var overlap = new OutlineOverlap();
                    for (var x = -other.Width; x <= one.Width; x += 3)
                    {
                        for (var y = -other.Length; y <= one.Length; y++)
                        {
                            GridPoint[] moved = [.. other.Corners.Select(corner => new GridPoint(corner.X + x, corner.Y + y))];
                            var meets = overlap.InteriorsMeet(one.Corners, moved);
                            var depth = book.Depth(first, second, x, y);
                            Assert.Equal(depth, book.Depth(second, first, -x, -y), 1e-6);
                            Assert.True(meets ? depth > 0 : depth == 0 || IsSlot(overlap, one, other, x, y), $"{x}, {y}: {depth}");
                        }
                    }
                },
                seed: "0000000000001",
                iter: 60
            );

    [Fact]
    public void Two_outlines_turned_together_keep_their_no_fit_polygon() =>
        Gen.Select(Shapes.GenPiece, Shapes.GenPiece)
            .Sample(
                (lying, moving) =>
                {
                    // All turns of both: the first pair of turns is sliced, the others are that one turned.
                    var book = new ShapeBook(CancellationToken.None);
                    var ones = Enumerable
                        .Range(0, 4)
                        .Select(quarter => book.Add(OutlineShape.Of(lying, 90 * quarter), 0, quarter))
                        .ToList();
                    var others = Enumerable
                        .Range(0, 4)
                        .Select(quarter => book.Add(OutlineShape.Of(moving, 90 * quarter), 1, quarter))
                        .ToList();
                    book.Close();
                    Assert.True(book.TryMakeAll(new StepBudget(long.MaxValue, CancellationToken.None), long.MaxValue));
                    for (var quarter = 0; quarter < 4; quarter++)
                    {
                        var (first, second) = (ones[quarter], others[(quarter + 1) % 4]);
                        var sliced = new ShapeBook(CancellationToken.None);
                        var (alone, beside) = (sliced.Add(book[first]), sliced.Add(book[second]));
                        sliced.Close();
                        for (var x = -book[second].Width + 0.5; x <= book[first].Width; x += 3)
                        {
                            for (var y = -book[second].Length + 0.25; y <= book[first].Length; y++)
                            {
                                Assert.Equal(sliced.Depth(alone, beside, x, y), book.Depth(first, second, x, y), 1e-6);
                            }
                        }
                    }
                },
                seed: "0000000000001",
                iter: 40
            );

    [Fact]
    public void Where_corners_are_square_every_place_without_play_is_known() =>
        Gen.Select(Shapes.GenBattlement, Shapes.GenBattlement)
            .Sample(
                (lying, moving) =>
                {
                    var (one, other) = (OutlineShape.Of(lying, 0), OutlineShape.Of(moving, 180));
                    var (book, overlap) = (new ShapeBook(CancellationToken.None), new OutlineOverlap());
                    var (first, second) = (book.Add(one), book.Add(other));
                    book.Close();
                    for (var x = -other.Width; x <= one.Width; x++)
                    {
                        for (var y = -other.Length; y <= one.Length; y++)
                        {
                            GridPoint[] moved = [.. other.Corners.Select(corner => new GridPoint(corner.X + x, corner.Y + y))];
                            Assert.Equal(overlap.InteriorsMeet(one.Corners, moved), book.Depth(first, second, x, y) > 0);
                        }
                    }
                },
                seed: "0000000000001",
                iter: 300
            );

    [Fact]
    public void A_tongue_slides_into_a_slot_as_wide_as_itself_and_a_wedge_into_its_notch()
    {
        var slot = Shapes.Piece((0, 0), (90, 0), (90, 60), (60, 60), (60, 20), (30, 20), (30, 60), (0, 60));
        var notch = Shapes.Piece((0, 0), (90, 0), (90, 60), (61, 60), (40, 20), (19, 60), (0, 60));
        var book = new ShapeBook(CancellationToken.None);
        var (slotShape, notchShape) = (book.Add(OutlineShape.Of(slot, 0)), book.Add(OutlineShape.Of(notch, 0)));
        var tongue = book.Add(OutlineShape.Rectangle(30, 70));
        var wedge = book.Add(OutlineShape.Of(Shapes.Piece((21, 0), (42, 40), (0, 40)), 0));
        book.Close();
        for (var y = 20; y < 60; y++)
        {
            Assert.Equal(0, book.Depth(slotShape, tongue, 30, y));
            Assert.True(book.Depth(slotShape, tongue, 29, y) > 0);
            Assert.True(book.Depth(slotShape, tongue, 31, y) > 0);
        }

        Assert.True(book.Depth(slotShape, tongue, 30, 19) > 0);
        Assert.Equal(0, book.Depth(notchShape, wedge, 19, 20));
        Assert.True(book.Depth(notchShape, wedge, 19, 19) > 0);
        Assert.True(book.Depth(notchShape, wedge, 20, 20) > 0);
    }

    [Theory]
    [InlineData(0, 0, 10)]
    [InlineData(10, 0, 0)]
    [InlineData(0, -10, 0)]
    [InlineData(9, 9, 0.5)]
    [InlineData(4, 0, 3.75)]
    public void The_depth_of_two_squares_joins_the_ways_out_along_and_across(double x, double y, double depth)
    {
        // a b / (a + b) with the ways out a along x and b along y; 10 × 10 / 20 = 5 where both are 10.
        var book = new ShapeBook(CancellationToken.None);
        var square = book.Add(OutlineShape.Rectangle(10, 10));
        book.Close();
        Assert.Equal(depth == 10 ? 5 : depth, book.Pair(square, square).Depth(x, y), 9);
    }

    /// <summary>A place without play, which the search may give up: nudged any way, the two overlap or stay in such a place.</summary>
    private static bool IsSlot(OutlineOverlap overlap, OutlineShape one, OutlineShape other, long x, long y)
    {
        var blocked = 0;
        foreach (var (dx, dy) in new (long, long)[] { (1, 0), (-1, 0), (0, 1), (0, -1) })
        {
            GridPoint[] fine = [.. other.Corners.Select(corner => new GridPoint(100 * (corner.X + x) + dx, 100 * (corner.Y + y) + dy))];
            GridPoint[] lying = [.. one.Corners.Select(corner => new GridPoint(100 * corner.X, 100 * corner.Y))];
            blocked += overlap.InteriorsMeet(lying, fine) ? 1 : 0;
        }

        return blocked >= 2;
    }
}
