using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>The base of a pouf: a disc, or two halves of one with the closure between them.</summary>
internal static class PoufBase
{
    /// <summary>The panels.</summary>
    /// <param name="cushion">A pouf.</param>
    /// <param name="rim">Finished length of the wall, to the nanometre.</param>
    /// <param name="seam">The finish of the rim.</param>
    public static ImmutableArray<Panel> Of(CushionSpecification cushion, Length rim, EdgeFinish seam) =>
        cushion.Closure switch
        {
            ZipperClosure zipper => Lapped(
                Halves(cushion.Width, rim, seam, EdgeFinish.ZipperTurnUnder(zipper.TurnUnder), zipper.Lap),
                zipper
            ),
            OverlappingClosure flaps => Halves(cushion.Width, rim, seam, EdgeFinish.DoubleHem(flaps.Fold), flaps.Overlap),
            _ => [Disc(cushion.Width, rim, seam)],
        };

    // The back half laps over the front one.
    private static ImmutableArray<Panel> Lapped(ImmutableArray<Panel> halves, ZipperClosure zipper) =>
        halves.SetItem(0, LapLine.On(halves[0], halves[0][EdgeName.Upper], zipper));

    /// <summary>The zipper between the halves; nothing when there is none.</summary>
    /// <param name="bottom">The base's panels.</param>
    /// <returns>Nothing for overlapping halves either: their hems are sewn to nothing.</returns>
    public static IEnumerable<Seam> Opening(ImmutableArray<Panel> bottom) =>
        bottom is [var front, var back] && front[EdgeName.Upper].Finish.Joins
            ? [new Seam(SeamKind.Zipper, new EdgeRef(front.Part, EdgeName.Upper), new EdgeRef(back.Part, EdgeName.Lower))]
            : [];

    /// <summary>The seam between the wall and the base; flaps lie over each other where the halves overlap.</summary>
    /// <param name="bottom">The base's panels.</param>
    /// <param name="wall">The lower edges of the wall, in their order round it.</param>
    /// <param name="rim">Finished length of the wall, to the nanometre.</param>
    /// <param name="closure">A hand-sewn one leaves this seam open.</param>
    public static Seam SewnTo(ImmutableArray<Panel> bottom, ImmutableArray<EdgeRef> wall, Length rim, ClosureSpecification closure)
    {
        Edge[] round =
        [
            .. bottom.SelectMany(panel => panel.Edges.Where(edge => edge.Name != EdgeName.Upper && edge.Name != EdgeName.Lower)),
        ];
        // What the rim of the halves is longer than the wall is what their flaps lie over each other at both ends.
        Length laid = round.Aggregate(Length.Zero, (sum, edge) => sum + edge.Length);
        return new Seam(
            closure is HandSewnClosure ? SeamKind.Gap : SeamKind.Plain,
            wall,
            [
                .. bottom.SelectMany(panel =>
                    panel.Edges.Where(edge => round.Contains(edge)).Select(edge => new EdgeRef(panel.Part, edge.Name))
                ),
            ],
            laid - rim
        );
    }

    // A whole base, its rim in one edge as long as the wall's.
    private static Panel Disc(Length diameter, Length rim, EdgeFinish seam)
    {
        Length radius = diameter.HalfUp();
        Point left = new(Length.Zero, radius),
            front = new(radius, Length.Zero),
            right = new(diameter, radius),
            back = new(radius, diameter);
        return Half(
            PartName.Bottom,
            new Point(radius, radius),
            new Edge(EdgeName.Front, [Quarter(left, front, rim, 0), Quarter(front, right, rim, 1)], seam),
            new Edge(EdgeName.Back, [Quarter(right, back, rim, 2), Quarter(back, left, rim, 3)], seam)
        );
    }

    // Each half runs on beyond the middle by half the overlap, still on the circle.
    private static ImmutableArray<Panel> Halves(Length diameter, Length rim, EdgeFinish seam, EdgeFinish inner, Length lap)
    {
        Length radius = diameter.HalfUp(),
            beyond = lap.HalfUp(),
            height = radius + beyond;
        // How far round the circle an end of a flap lies from the half's own end, as an angle.
        double r = radius.Nanometres,
            turn = Math.Asin(beyond.Nanometres / r);
        Length cut = Length.FromNanometres((long)Math.Round(r * (1 - Math.Cos(turn))));
        Point At(Length x, Length y) => new(x, y);
        // The back half is the front one turned by half a turn, so that its flat edge faces the other.
        Point Turned(Point point) => new(diameter - point.X, height - point.Y);

        Point upperLeft = At(cut, height),
            left = At(Length.Zero, radius),
            middle = At(radius, Length.Zero),
            right = At(diameter, radius),
            upperRight = At(diameter - cut, height);
        ImmutableArray<Segment> Rim(Func<Point, Point> placed, int quarter)
        {
            IEnumerable<Segment> quarters =
            [
                Quarter(placed(left), placed(middle), rim, quarter),
                Quarter(placed(middle), placed(right), rim, quarter + 1),
            ];
            return beyond == Length.Zero
                ? [.. quarters]
                : [new Segment(placed(upperLeft), placed(left), turn), .. quarters, new Segment(placed(right), placed(upperRight), turn)];
        }

        return
        [
            Half(
                PartName.Bottom with
                {
                    Half = FaceHalf.Front,
                },
                At(radius, radius),
                new Edge(EdgeName.Rim, Rim(point => point, 0), seam),
                new Edge(EdgeName.Upper, upperRight, upperLeft, inner)
            ),
            Half(
                PartName.Bottom with
                {
                    Half = FaceHalf.Back,
                },
                Turned(At(radius, radius)),
                new Edge(EdgeName.Lower, Turned(upperRight), Turned(upperLeft), inner),
                new Edge(EdgeName.Rim, Rim(Turned, 2), seam)
            ),
        ];
    }

    private static Panel Half(PartName part, Point centre, params ImmutableArray<Edge> edges) =>
        new()
        {
            Part = part,
            Role = FabricRole.Bottom,
            Edges = edges,
            Match = centre,
        };

    // A quarter of the circle, and of the rim.
    // Differences of running shares: the four add up to the rim to the nanometre, which four rounded quarters would not.
    private static Segment Quarter(Point from, Point to, Length rim, int number) =>
        Segment.Arc(from, to, Math.PI / 2, Length.FromNanometres((rim.Nanometres * (number + 1) / 4) - (rim.Nanometres * number / 4)));
}
