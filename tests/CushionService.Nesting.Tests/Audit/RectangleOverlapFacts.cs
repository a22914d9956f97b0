using CushionService.Nesting.Audit;

namespace CushionService.Nesting.Tests.Audit;

/// <summary>The sweep over rectangles against looking at every pair.</summary>
public sealed class RectangleOverlapFacts
{
    [Fact]
    public void The_sweep_finds_an_overlap_exactly_when_some_pair_shares_area()
    {
        var random = new Random(3);
        var (shared, apart) = (0, 0);
        for (var round = 0; round < 4_000; round++)
        {
            // Few rectangles on a small field: about half of the fields have no overlap.
            var rectangles = Enumerable
                .Range(0, random.Next(1, 6))
                .Select(_ => new GridRectangle(random.Next(-4, 9), random.Next(-4, 9), random.Next(1, 5), random.Next(1, 5)))
                .ToArray();
            Agree(rectangles, ref shared, ref apart);
        }

        Assert.True(shared > 500 && apart > 500, $"{shared} with an overlap, {apart} without");
    }

    [Theory]
    [InlineData(64, "as many as lie on the stack")]
    [InlineData(65, "one more")]
    [InlineData(400, "many more")]
    public void A_field_of_rectangles_side_by_side_has_no_overlap_until_one_grows_by_a_unit(int count, string _)
    {
        var random = new Random(count);
        var field = Enumerable.Range(0, count).Select(at => new GridRectangle(10 * (at % 8), 10 * (at / 8), 10, 10)).ToArray();
        random.Shuffle(field);
        Assert.Null(RectangleOverlap.Find(field));
        for (var round = 0; round < 20; round++)
        {
            int grown = random.Next(count);
            var spoiled = (GridRectangle[])field.Clone();
            spoiled[grown] = round % 2 == 0 ? field[grown] with { Width = 11 } : field[grown] with { Length = 11 };
            var (shared, apart) = (0, 0);
            Agree(spoiled, ref shared, ref apart);
        }
    }

    [Fact]
    public void One_rectangle_or_none_overlaps_nothing()
    {
        Assert.Null(RectangleOverlap.Find([]));
        Assert.Null(RectangleOverlap.Find([new GridRectangle(0, 0, 5, 5)]));
    }

    private static void Agree(GridRectangle[] rectangles, ref int shared, ref int apart)
    {
        bool any = false;
        for (var one = 0; one < rectangles.Length; one++)
        {
            for (var other = one + 1; other < rectangles.Length; other++)
            {
                any |= Share(rectangles[one], rectangles[other]);
            }
        }

        var found = RectangleOverlap.Find(rectangles);
        Assert.Equal(any, found is not null);
        (shared, apart) = any ? (shared + 1, apart) : (shared, apart + 1);
        if (found is var (first, second))
        {
            Assert.NotEqual(first, second);
            Assert.True(Share(rectangles[first], rectangles[second]), $"{rectangles[first]} and {rectangles[second]} do not overlap");
        }
    }

    private static bool Share(GridRectangle one, GridRectangle other) =>
        one.X < other.X + other.Width && other.X < one.X + one.Width && one.Y < other.Y + other.Length && other.Y < one.Y + one.Length;
}
