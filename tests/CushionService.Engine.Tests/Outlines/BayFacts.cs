using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace CushionService.Engine.Tests.Outlines;

public sealed class BayFacts
{
    private const double Inch = 25_400_000;
    private static readonly GeometryFactory Factory = new();

    // Fronts: wall − Σ p cot(a / 2), less the bulk. 18 cot 67.5° = 18 (√2 − 1); 10 cot 60° = 10 / √3; p cot 45° = p; 12 cot 30° = 12 √3.
    public static TheoryData<string, decimal[], double[], decimal, decimal, double[]> Bays() =>
        new()
        {
            { "a bay window", [30, 60, 30], [135, 135], 18, 0, [22.544156, 45.088312, 22.544156] },
            { "the same with 1/4 in of bulk", [30, 60, 30], [135, 135], 18, 0.25m, [22.294156, 44.588312, 22.294156] },
            { "a corner of a camper", [72, 48], [90], 22, 0, [50, 26] },
            { "half a hexagon", [20, 20, 20], [120, 120], 10, 0, [14.226497, 8.452995, 14.226497] },
            { "a sharp corner", [60, 70], [60], 12, 0, [39.215390, 49.215390] },
            { "an almost straight wall", [40, 40], [179], 18, 0, [39.842916, 39.842916] },
        };

    [Theory]
    [MemberData(nameof(Bays))]
    public void Fronts_are_the_walls_less_what_the_mitres_take(
        string name,
        decimal[] walls,
        double[] angles,
        decimal depth,
        decimal bulk,
        double[] fronts
    )
    {
        // Sources.Mathematics.
        Bay bay = Of(walls, angles, depth, bulk);

        for (var i = 0; i < walls.Length; i++)
        {
            Assert.True(Math.Abs(fronts[i] - (bay.Seat(i).FrontWidth.Nanometres / Inch)) < 1e-6, $"{name}, wall {i + 1}");
        }
    }

    [Theory]
    [InlineData(135, 18, 19.483060)] // p / sin 67.5°
    [InlineData(90, 18, 25.455844)] // p √2
    [InlineData(120, 10, 11.547005)] // 2 p / √3
    [InlineData(60, 12, 24)] // 2 p
    public void Both_ends_at_a_corner_are_one_mitre(double angle, int depth, double length)
    {
        // Sources.Mathematics: a mitre is as long as the depth over the sine of half the angle.
        Bay bay = Of([90, 80], [angle], depth, 0.25m);
        OutlineSide right = bay.Seat(0).Sides[1],
            left = bay.Seat(1).Sides[3];

        Assert.Equal(right.Length, left.Length);
        Assert.Equal(length, right.Length.Nanometres / Inch, 6);
    }

    [Fact]
    public void The_left_seat_of_a_bay_is_the_right_one_in_a_mirror()
    {
        Bay bay = Of([30, 60, 30], [135, 135], 18, 0.25m);

        Assert.Equal(Length.Zero, bay.Seat(0).BackOffset);
        Assert.True(bay.Seat(2).BackOffset < Length.Zero);
        Assert.False(bay.Seat(0).IsSymmetric);
        Assert.True(bay.Seat(1).IsSymmetric);
        Assert.Equal(
            bay.Seat(0).Sides.Select(side => side.Length),
            bay.Seat(2)
                .Sides.Reverse()
                .Select(side => side.Length)
                .Skip(3)
                .Concat(bay.Seat(2).Sides.Reverse().Select(side => side.Length).Take(3))
        );
    }

    [Fact]
    public void Seats_without_bulk_fill_the_room_along_their_walls()
    {
        // NetTopologySuite's buffer of the walls on the side of the room, with mitred joins, for two hundred bays.
        var random = new Random(17);
        var tried = 0;
        while (tried < 200)
        {
            int count = random.Next(2, 8);
            Bay bay = Of(
                [.. Enumerable.Range(0, count).Select(_ => (decimal)random.Next(20, 120))],
                [.. Enumerable.Range(1, count - 1).Select(_ => (double)random.Next(60, 180))],
                random.Next(8, 25),
                0
            );
            if (Enumerable.Range(0, count).Any(i => bay.Walls[i] < bay.ShortestWall(i)))
            {
                continue;
            }

            var plan = new BayPlan(bay);
            Polygon[] seats = [.. plan.Seats.Select(Shape)];
            bool overlap = Pairs(seats).Any(pair => pair.One.Intersection(pair.Other).Area > 1e-6);
            Assert.Equal(overlap, plan.Overlap() is not null);
            if (overlap)
            {
                continue;
            }

            tried++;
            Coordinate[] walls = [.. seats.Select(seat => seat.Coordinates[3]), seats[^1].Coordinates[2]];
            NetTopologySuite.Geometries.Geometry room = BufferOp.Buffer(
                Factory.CreateLineString(walls),
                -(double)bay.Depth.Nanometres / Inch,
                new BufferParameters(8, EndCapStyle.Flat, JoinStyle.Mitre, 10) { IsSingleSided = true }
            );
            NetTopologySuite.Geometries.Geometry all = seats.Aggregate(
                (NetTopologySuite.Geometries.Geometry)Factory.CreatePolygon(),
                (sum, seat) => sum.Union(seat)
            );
            Assert.Equal(seats.Sum(seat => seat.Area), all.Area, 1e-4);
            Assert.True(all.SymmetricDifference(room).Area < 1e-3, $"{bay}");
            Assert.Equal(seats.Sum(seat => seat.Area), Enumerable.Range(0, count).Sum(i => bay.Seat(i).Area.In(LengthUnit.Inch)), 1e-4);
        }
    }

    private static IEnumerable<(Polygon One, Polygon Other)> Pairs(Polygon[] seats) =>
        seats.SelectMany((one, i) => seats.Skip(i + 1).Select(other => (one, other)));

    private static Polygon Shape(ImmutableArray<(double X, double Y)> seat) =>
        Factory.CreatePolygon([.. seat.Append(seat[0]).Select(corner => new Coordinate(corner.X / Inch, corner.Y / Inch))]);

    private static Bay Of(decimal[] walls, double[] angles, decimal depth, decimal bulk) =>
        new([.. walls.Select(Length.FromInches)], [.. angles], In(depth), In(bulk));
}
