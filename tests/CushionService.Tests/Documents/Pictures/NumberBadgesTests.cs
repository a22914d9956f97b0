using CushionService.Documents.Drawings;
using CushionService.Documents.Pictures;

namespace CushionService.Tests.Documents.Pictures;

/// <summary>Numbers on the pieces of a picture.</summary>
public sealed class NumberBadgesTests
{
    private const double Width = 30;

    [Theory]
    [InlineData(0)]
    [InlineData(5)]
    [InlineData(14)]
    public void No_number_covers_another(double between)
    {
        (int Number, Spot Middle)[] pieces = [.. Enumerable.Range(1, 24).Select(i => (i, new Spot(500 + between * i, 300)))];
        List<Shape> shapes = [];

        NumberBadges.Draw(shapes, pieces, 22);

        Spot[] middles =
        [
            .. shapes.Where(shape => shape.IsClosed && shape.Text is null).Select(shape => Box.Around([.. shape.Points]).Centre),
        ];
        Assert.Equal(pieces.Length, middles.Length);
        Assert.All(
            middles.SelectMany((one, i) => middles.Skip(i + 1).Select(other => (one - other).Size)),
            apart => Assert.True(apart > Width, $"{apart}")
        );
        Assert.Equal(pieces.Select(piece => $"{piece.Number}"), shapes.Where(shape => shape.Text is not null).Select(shape => shape.Text!));
    }

    [Fact]
    public void A_number_alone_is_on_its_piece_and_one_that_moved_has_a_line_to_it()
    {
        List<Shape> shapes = [];
        NumberBadges.Draw(shapes, [(1, new Spot(100, 100)), (2, new Spot(300, 100)), (3, new Spot(305, 100))], 22);

        Shape line = Assert.Single(shapes, shape => !shape.IsClosed);
        Assert.Equal(new Spot(305, 100), line.Points[0]);
        Assert.True((line.Points[1] - new Spot(300, 100)).Size > Width);
    }
}
