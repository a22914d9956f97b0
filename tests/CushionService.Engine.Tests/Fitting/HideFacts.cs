using System.Collections.Immutable;
using CushionService.Engine.Fitting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;
using NetTopologySuite.Geometries;
using Point = CushionService.Engine.Geometry.Point;

namespace CushionService.Engine.Tests.Fitting;

/// <summary>Pieces on hides and panels that are no rectangles, held against NetTopologySuite.</summary>
public sealed class HideFacts
{
    // The largest square at the right angle of an isosceles triangle has half of a leg (general geometry).
    [Theory]
    [InlineData(50, FitVerdict.Fits)]
    [InlineData(50.01, FitVerdict.NotFound)]
    [InlineData(71, FitVerdict.Impossible)]
    public void A_square_in_a_triangle(double side, FitVerdict verdict) =>
        Assert.Equal(verdict, Lay(1, (decimal)side, (decimal)side, false, [(0, 0), (100, 0), (0, 100)]).Verdict);

    // An ell of two arms 20 wide: a strip of 60 lies in the long one, and turned in neither.
    [Theory]
    [InlineData(60, 20, 1, FitVerdict.Fits)]
    [InlineData(20, 60, 1, FitVerdict.Impossible)]
    [InlineData(20, 20, 4, FitVerdict.Fits)]
    [InlineData(20, 20, 5, FitVerdict.Impossible)]
    [InlineData(21, 20, 3, FitVerdict.NotFound)]
    public void Pieces_in_an_ell(int width, int length, int copies, FitVerdict verdict) =>
        Assert.Equal(verdict, Lay(copies, width, length, false, [(0, 0), (60, 0), (60, 20), (20, 20), (20, 40), (0, 40)]).Verdict);

    [Fact]
    public void A_strip_lies_along_the_hide_where_it_may_turn()
    {
        OffcutFit fit = Lay(1, 20, 60, true, [(0, 0), (60, 0), (60, 20), (20, 20), (20, 40), (0, 40)]);

        Assert.Equal(FitVerdict.Fits, fit.Verdict);
        Assert.Equal(90, fit.Layouts[0].Placements[0].Turn);
    }

    // After a wash of a tenth each way a square of 45 is the largest.
    [Theory]
    [InlineData(45, FitVerdict.Fits)]
    [InlineData(45.1, FitVerdict.NotFound)]
    public void A_hide_is_washed_as_fabric_is(double side, FitVerdict verdict) =>
        Assert.Equal(verdict, Lay(1, (decimal)side, (decimal)side, false, [(0, 0), (100, 0), (0, 100)], 0.1m).Verdict);

    [Fact]
    public void Whatever_is_laid_lies_within_its_hide_and_beside_the_others()
    {
        // A fixed seed: the same hides each time.
        var random = new Random(17);
        var factory = new GeometryFactory();
        int laid = 0;
        for (var number = 0; number < 60; number++)
        {
            (decimal X, decimal Y)[] corners = Star(random);
            OffcutFit fit = Lay(random.Next(2, 12), random.Next(8, 40), random.Next(8, 40), random.Next(2) == 0, corners);
            OffcutLayout layout = fit.Layouts[0];
            NetTopologySuite.Geometries.Geometry hide = Ring(factory, layout.Room.Corners);
            NetTopologySuite.Geometries.Geometry[] boxes = [.. layout.Placements.Select(one => Ring(factory, Box(one)))];
            laid += boxes.Length;
            Assert.All(boxes, box => Assert.True(hide.Covers(box), $"Hide {number}"));
            Assert.All(
                boxes,
                box => Assert.All(boxes, other => Assert.True(ReferenceEquals(box, other) || box.Intersection(other).Area < 1))
            );
        }

        Assert.True(laid > 200, $"Only {laid} pieces were laid.");
    }

    // Corners round a middle at any distance: a simple polygon, hollow in places.
    private static (decimal X, decimal Y)[] Star(Random random) =>
        [
            .. Enumerable
                .Range(0, 12)
                .Select(i => (Angle: 2 * Math.PI * i / 12, Reach: 40 + (60 * random.NextDouble())))
                .Select(at => ((decimal)(100 + (at.Reach * Math.Cos(at.Angle))), (decimal)(100 + (at.Reach * Math.Sin(at.Angle))))),
        ];

    private static ImmutableArray<Point> Box(LaidPiece one) =>
        [new(one.X, one.Y), new(one.X + one.Width, one.Y), new(one.X + one.Width, one.Y + one.Length), new(one.X, one.Y + one.Length)];

    private static NetTopologySuite.Geometries.Polygon Ring(GeometryFactory factory, ImmutableArray<Point> corners) =>
        factory.CreatePolygon([.. corners.Append(corners[0]).Select(corner => new Coordinate(corner.X.Nanometres, corner.Y.Nanometres))]);

    private static OffcutFit Lay(
        int copies,
        decimal width,
        decimal length,
        bool turns,
        (decimal X, decimal Y)[] corners,
        decimal shrinkage = 0
    )
    {
        ImmutableArray<Point> outline = [.. corners.Select(corner => new Point(In(corner.X), In(corner.Y)))];
        Point low = new(outline.Min(corner => corner.X), outline.Min(corner => corner.Y));
        outline = [.. outline.Select(corner => corner.Moved(-low.X, -low.Y))];
        FabricSpecification fabric = Fabric with
        {
            Width = In(240),
            Selvedge = Length.Zero,
            LengthShrinkage = shrinkage,
            WidthShrinkage = shrinkage,
            OnHand = [new(outline.Max(corner => corner.X), outline.Max(corner => corner.Y)) { Outline = outline }],
        };
        LoosePieceSpecification piece = new(
            "a",
            "/pieces/0",
            fabric.Id,
            copies,
            In(width),
            In(length),
            turns ? Rotations.QuarterTurns : Rotations.HalfTurn,
            []
        );
        return OffcutFit.Of(fabric, [CushionService.Engine.Cutting.CutPiece.Of(piece, fabric)], Effort.Quick, 1, CancellationToken.None);
    }
}
