using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Documents.Exchange;
using CushionService.Documents.TrueSize;
using CushionService.Tests.Documents.TrueSize;
using CushionService.Tests.Orders;

namespace CushionService.Tests.Documents.Exchange;

/// <summary>Pattern data read back by a reader of its own.</summary>
public sealed class PatternExchangeTests
{
    [Fact]
    public void Area_and_way_round_of_300_pieces_are_those_of_the_answer()
    {
        int read = 0;
        for (int number = 0; read < 300; number++)
        {
            Assert.True(number < 1000, "Too few generated orders are sound.");
            if (Drafted.TryCheck(OrderGenerator.Sound(number).ToJsonString()) is not { } order)
            {
                continue;
            }

            Units units = order.Order.Units!.Value;
            IReadOnlyList<PatternPiece> pieces = PatternPiece.Of(order.Drafting, order.Unit, order.Language);
            var file = DxfReader.Read(PatternExchange.Write(pieces, order.Order.Reference, units));
            string measure = units == Units.In ? "UNITS: ENGLISH" : "UNITS: METRIC";
            Assert.Single(file.Entities, entity => entity.Text(1) == measure);
            double scale = units == Units.Cm ? 10 : 1;
            foreach (PatternPiece piece in pieces)
            {
                List<(double X, double Y)> boundary = file.Polylines(PatternExchange.NameOf(piece), 1).Single();
                (double area, double round) = Measure(boundary);
                (double expectedArea, double expectedRound) = Measure(Corners(piece.Answer, scale));
                Assert.Equal(expectedArea, area, expectedArea * 1e-6);
                Assert.Equal(expectedRound, round, expectedRound * 1e-6);
                read++;
            }
        }
    }

    [Fact]
    public void Marks_are_on_the_layers_of_their_kinds()
    {
        PatternPiece disc = Drafted.Pieces(Drafted.Order(Drafted.Disc))[0];
        var file = DxfReader.Read(PatternExchange.Write([disc], "terrace", Units.Mm));
        DxfEntity[] inside = [.. file.Entities.Where(entity => entity.Block == PatternExchange.NameOf(disc))];
        // Three single notches and a double one.
        Assert.Equal(5, inside.Count(entity => entity is { Kind: "POINT", Layer: 4 }));
        DxfEntity grain = Assert.Single(inside, entity => entity is { Kind: "LINE", Layer: 7 });
        Assert.Equal(grain.Number(10), grain.Number(11));
        // A circle only curves.
        Assert.DoesNotContain(inside, entity => entity is { Kind: "POINT", Layer: 2 });
        Assert.Equal(disc.Answer.Points!.Count, inside.Count(entity => entity is { Kind: "POINT", Layer: 3 }));
        (double sewn, _) = Measure(file.Polylines(PatternExchange.NameOf(disc), 14).Single());
        Assert.Equal(Math.PI * 205 * 205, sewn, 100.0);
        Assert.Single(file.Entities, entity => entity.Kind == "INSERT");
        // The curves for validation are finer than the boundary: nearer to the area of the circle.
        (double cut, _) = Measure(file.Polylines(PatternExchange.NameOf(disc), 84).Single());
        Assert.Equal(Math.PI * 217 * 217, cut, 100.0);
        Assert.Single(file.Polylines(PatternExchange.NameOf(disc), 87));
    }

    private static List<(double X, double Y)> Corners(PieceAnswer piece, double scale) =>
        piece.Points is { } points
            ? [.. points.Select(point => (point.X * scale, point.Y * scale))]
            : [(0, 0), (piece.Width * scale, 0), (piece.Width * scale, piece.Length * scale), (0, piece.Length * scale)];

    private static (double Area, double Round) Measure(List<(double X, double Y)> corners)
    {
        double area = 0,
            round = 0;
        for (int i = 0; i < corners.Count; i++)
        {
            ((double x, double y), (double toX, double toY)) = (corners[i], corners[(i + 1) % corners.Count]);
            area += (x * toY - toX * y) / 2;
            round += double.Hypot(toX - x, toY - y);
        }

        return (area, round);
    }
}
