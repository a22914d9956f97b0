using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;
using NetTopologySuite.Geometries;
using Polygon = NetTopologySuite.Geometries.Polygon;
using Side = CushionService.Engine.Specifications.Outlines.Side;

namespace CushionService.Engine.Tests.Outlines;

/// <summary>Seam line, area, extent and turning sense of outlines against <see cref="Sources.ReferenceGeometry"/>.</summary>
public sealed class ReferenceOutlineFacts
{
    private const double Inch = 25_400_000;

    // Of each arc: its chords are then shorter than it by less than a part in ten million.
    private const int Chords = 2000;

    private static readonly GeometryFactory Factory = new();

    public static TheoryData<string, Outline> Shapes() =>
        new()
        {
            { "rectangle of 44 by 18", new RectangleOutline(In(44), In(18)) },
            { "circle of 19", new CircleOutline(In(19)) },
            { "oval of 31 by 17", new OvalOutline(In(31), In(17)) },
            { "rounded rectangle of 50 by 22, radius 4", new RoundedRectangleOutline(In(50), In(22), In(4)) },
            { "round-ended, 38 by 13", new RoundEndedOutline(In(38), In(13)) },
            { "D of 21 by 16", new DShapeOutline(In(21), In(16)) },
            { "half round of 27", new HalfRoundOutline(In(27)) },
            { "bay of 52, 31 and 17, askew", new TrapezoidOutline(In(52), In(31), In(17), In(4)) },
            { "tee within 29 by 23", new TeeOutline(In(29), In(23), In(3), In(5)) },
            { "ell of 71 by 55", new EllOutline(In(71), In(55), In(47), In(33), Side.Right) },
            { "U of 64 by 37", new UOutline(In(64), In(37), In(21), In(14)) },
            { "heptagon of side 9", new RegularPolygonOutline(7, In(9)) },
        };

    [Theory]
    [MemberData(nameof(Shapes))]
    public void The_seam_line_is_as_long_as_the_reference_says(string shape, Outline outline) =>
        Same(shape, Drawn(outline).Length, outline.Perimeter.Nanometres / Inch);

    [Theory]
    [MemberData(nameof(Shapes))]
    public void The_area_is_what_the_reference_says(string shape, Outline outline) =>
        Same(shape, Drawn(outline).Area, outline.Area.In(LengthUnit.Inch));

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Width_and_depth_are_the_extent_that_the_reference_says(string shape, Outline outline)
    {
        Envelope extent = Drawn(outline).EnvelopeInternal;

        Same(shape, extent.Width, outline.Width.Nanometres / Inch);
        Same(shape, extent.Height, outline.Depth.Nanometres / Inch);
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Outlines_are_simple_and_run_counter_clockwise(string shape, Outline outline)
    {
        Polygon drawn = Drawn(outline);

        Assert.True(drawn.IsValid, shape);
        Assert.True(NetTopologySuite.Algorithm.Orientation.IsCCW(drawn.ExteriorRing.Coordinates), shape);
    }

    private static void Same(string shape, double theirs, double ours) =>
        Assert.True(Math.Abs((ours / theirs) - 1) < 2e-6, $"{shape}: {theirs} by {Sources.ReferenceGeometry}; ours is {ours}.");

    private static Polygon Drawn(Outline outline)
    {
        List<Coordinate> ring = [.. outline.Sides.SelectMany(side => side.Path).SelectMany(Points)];
        ring.Add(ring[0].Copy());
        return Factory.CreatePolygon([.. ring]);
    }

    private static IEnumerable<Coordinate> Points(Segment segment)
    {
        int count = segment.IsStraight ? 1 : Chords;
        for (var i = 0; i < count; i++)
        {
            CushionService.Engine.Geometry.Point at = i == 0 ? segment.From : segment.Split((double)i / count).Before.To;
            yield return new Coordinate(at.X.Nanometres / Inch, at.Y.Nanometres / Inch);
        }
    }
}
