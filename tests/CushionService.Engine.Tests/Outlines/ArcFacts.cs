using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;
using NetTopologySuite.Geometries;
using Outline = CushionService.Engine.Specifications.Outlines.Outline;
using Point = CushionService.Engine.Geometry.Point;

namespace CushionService.Engine.Tests.Outlines;

/// <summary>Corners with radii of their own, and sides that are arcs.</summary>
public sealed class ArcFacts
{
    private const double Inch = 25_400_000;
    private static readonly ImmutableArray<Point> Square = [At(0, 0), At(20, 0), At(20, 20), At(0, 20)];

    // Sources.Mathematics: a segment of a circle over chord c with rise b has radius (c² / 4 + b²) / 2b, angle 4 atan (2b / c), length rθ
    // and area r² (θ − sin θ) / 2. A corner of radius r takes (2 − π / 2) r from the perimeter and (1 − π / 4) r² from the area.
    public static TheoryData<string, Outline, double, double, double, double> Shapes() =>
        new()
        {
            { "one corner of 12 in 60 by 40", Rectangle(60, 40, 0, 12, 0, 0), 194.849556, 2369.097336, 60, 40 },
            { "a half circle on a square of 20", Arc(20, 10), 60 + (10 * Math.PI), 400 + (50 * Math.PI), 20, 30 },
            { "a rise of 2 on a square of 20", Arc(20, 2), 80.529138, 426.878793, 20, 22 },
            { "a hollow of 2 in a square of 20", Arc(20, -2), 80.529138, 373.121207, 20, 20 },
            { "two corners of 6 at the front", Rectangle(40, 30, 6, 6, 0, 0), 134.849556, 1184.548668, 40, 30 },
        };

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Perimeter_area_and_extent(string shape, Outline outline, double perimeter, double area, double width, double depth)
    {
        Assert.True(Math.Abs(perimeter - (outline.Perimeter.Nanometres / Inch)) < 1e-5, $"{shape}: {outline.Perimeter.Nanometres / Inch}");
        Assert.True(Math.Abs(area - outline.Area.In(LengthUnit.Inch)) < 1e-4, $"{shape}: {outline.Area.In(LengthUnit.Inch)}");
        Assert.Equal(width, outline.Width.Nanometres / Inch, 6);
        Assert.Equal(depth, outline.Depth.Nanometres / Inch, 6);
    }

    [Fact]
    public void A_rise_and_its_radius_give_one_arc()
    {
        // Sources.Mathematics: over 20 in a rise of 2 in is a radius of (100 + 4) / 4 = 26 in.
        Assert.Equal(PolygonOutline.SweepOf(In(20), In(2)), PolygonOutline.SweepOfRadius(In(20), In(26)), 12);
        Assert.Equal(-PolygonOutline.SweepOf(In(20), In(2)), PolygonOutline.SweepOfRadius(In(20), In(-26)), 12);
        Assert.Equal(Math.PI, PolygonOutline.SweepOfRadius(In(20), In(10)), 12);
    }

    [Fact]
    public void Arcs_that_cross_a_side_are_refused()
    {
        // A thin strip of 20 by 3 whose front hollows 5 in: it passes the back.
        ImmutableArray<Point> strip = [At(0, 0), At(20, 0), At(20, 3), At(0, 3)];
        var hollow = new PolygonOutline(strip, [default, default, default, default], [PolygonOutline.SweepOf(In(20), In(-5)), 0, 0, 0]);

        Assert.Equal("Points", Assert.Single(hollow.Faults()).Field);
        Assert.Empty(
            new PolygonOutline(strip, [default, default, default, default], [PolygonOutline.SweepOf(In(20), In(-2)), 0, 0, 0]).Faults()
        );
    }

    [Fact]
    public void Radii_that_use_up_a_side_are_refused() =>
        Assert.Equal(
            [("Corners[1]", In(8))],
            new PolygonOutline(Square, [In(12), In(9), default, default], [0, 0, 0, 0])
                .Faults()
                .Select(fault => (fault.Field, fault.Below!.Value))
        );

    [Fact]
    public void Areas_agree_with_NetTopologySuite()
    {
        // Arcs of any rise on a square, flattened finely, against its polygon's area.
        var random = new Random(5);
        for (var i = 0; i < 100; i++)
        {
            double[] sweeps = [.. Enumerable.Range(0, 4).Select(_ => (random.NextDouble() * 2) - 0.6)];
            var outline = new PolygonOutline(Square, [.. Square.Select(_ => Length.Zero)], [.. sweeps]);
            if (outline.Faults().Any())
            {
                continue;
            }

            Coordinate[] ring =
            [
                .. outline.Sides.SelectMany(side =>
                    side.Path.SelectMany(segment =>
                        Enumerable
                            .Range(0, 400)
                            .Select(k => segment.At(k / 400.0))
                            .Select(at => new Coordinate(at.X.Nanometres / Inch, at.Y.Nanometres / Inch))
                    )
                ),
            ];
            NetTopologySuite.Geometries.Polygon polygon = new GeometryFactory().CreatePolygon([.. ring, ring[0]]);

            Assert.True(polygon.IsValid);
            Assert.Equal(polygon.Area, outline.Area.In(LengthUnit.Inch), 1e-2);
            Assert.Equal(0, polygon.EnvelopeInternal.MinX, 6);
            Assert.Equal(0, polygon.EnvelopeInternal.MinY, 6);
            Assert.Equal(polygon.EnvelopeInternal.MaxX, outline.Width.Nanometres / Inch, 6);
            Assert.Equal(polygon.EnvelopeInternal.MaxY, outline.Depth.Nanometres / Inch, 6);
        }
    }

    private static CorneredRectangleOutline Rectangle(decimal width, decimal depth, params decimal[] radii) =>
        new(In(width), In(depth), [.. radii.Select(In)]);

    // A square whose back is an arc.
    private static PolygonOutline Arc(decimal side, decimal rise) =>
        new(
            [At(0, 0), At(side, 0), At(side, side), At(0, side)],
            [default, default, default, default],
            [0, 0, PolygonOutline.SweepOf(In(side), In(rise)), 0]
        );

    private static Point At(decimal x, decimal y) => new(In(x), In(y));
}
