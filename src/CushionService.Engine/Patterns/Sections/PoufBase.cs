using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>The base of a pouf: a disc, or two halves of one with the closure between them.</summary>
internal static class PoufBase
{
    /// <summary>The panels.</summary>
    /// <param name="cushion">A pouf.</param>
    /// <param name="rim">The rim, divided as the wall.</param>
    /// <param name="seam">The finish of the rim.</param>
    public static ImmutableArray<Panel> Of(CushionSpecification cushion, PoufRim rim, EdgeFinish seam) =>
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

    /// <summary>The seams between the wall and the base, one for each run; flaps lie over each other where the halves overlap.</summary>
    /// <param name="bottom">The base's panels.</param>
    /// <param name="wall">The runs of the wall and its lower edges, in their order round it.</param>
    /// <param name="closure">A hand-sewn one leaves a gap in what is then one seam.</param>
    public static IEnumerable<Seam> SewnTo(
        ImmutableArray<Panel> bottom,
        ImmutableArray<(OutlineSide Run, EdgeRef Lower)> wall,
        ClosureSpecification closure
    )
    {
        if (closure is HandSewnClosure)
        {
            return [new Seam(SeamKind.Gap, [.. wall.Select(one => one.Lower)], [.. wall.SelectMany(one => Rim(one.Run.Name))])];
        }

        return wall.Select(one =>
        {
            ImmutableArray<EdgeRef> rim = [.. Rim(one.Run.Name)];
            // What the rim is longer than the wall is what the flaps lie over each other there.
            Length laid = rim.Aggregate(Length.Zero, (sum, edge) => sum + bottom.First(panel => panel.Part == edge.Part)[edge.Edge].Length);
            return new Seam(SeamKind.Plain, [one.Lower], rim, laid - one.Run.Length);
        });

        IEnumerable<EdgeRef> Rim(EdgeName run) =>
            bottom.SelectMany(panel =>
                panel
                    .Edges.Where(edge => edge.Name == run || edge.Name == run.With(Parting.Again))
                    .Select(edge => new EdgeRef(panel.Part, edge.Name))
            );
    }

    // A whole base, its rim as long as the wall.
    private static Panel Disc(Length diameter, PoufRim rim, EdgeFinish seam)
    {
        Length radius = diameter.HalfUp();
        return Half(PartName.Bottom, new Point(radius, radius), rim.Between(rim.Start, rim.Start + rim.Round, rim.At, seam));
    }

    // Each half runs on beyond the middle by half the overlap, still on the circle.
    private static ImmutableArray<Panel> Halves(Length diameter, PoufRim rim, EdgeFinish seam, EdgeFinish inner, Length lap)
    {
        Length radius = diameter.HalfUp(),
            beyond = lap.HalfUp(),
            height = radius + beyond;
        // How far round the circle an end of a flap lies from the half's own end, as an angle.
        double r = radius.Nanometres,
            turn = Math.Asin(beyond.Nanometres / r);
        Length cut = Length.FromNanometres((long)Math.Round(r * (1 - Math.Cos(turn)))),
            reach = Length.FromNanometres((long)Math.Round(r * turn)),
            half = rim.Quarter(2);
        Point upperLeft = new(cut, height),
            upperRight = new(diameter - cut, height);
        (Length from, Length to) = (rim.Snapped(-reach), rim.Snapped(half + reach));
        (Length backFrom, Length backTo) = (rim.Snapped(half - reach), rim.Snapped(rim.Round + reach));
        return
        [
            Half(
                PartName.Bottom with
                {
                    Half = FaceHalf.Front,
                },
                new Point(radius, radius),
                [
                    .. rim.Between(from, to, at => OnHalf(at, from, to, Length.Zero), seam),
                    new Edge(EdgeName.Upper, upperRight, upperLeft, inner),
                ]
            ),
            Half(
                PartName.Bottom with
                {
                    Half = FaceHalf.Back,
                },
                Turned(new Point(radius, radius)),
                [
                    new Edge(EdgeName.Lower, Turned(upperRight), Turned(upperLeft), inner),
                    .. rim.Between(backFrom, backTo, at => Turned(OnHalf(at, backFrom, backTo, half)), seam),
                ]
            ),
        ];

        // Its ends lie level, on the line of the opening.
        Point OnHalf(Length at, Length start, Length end, Length turned) =>
            at == start ? upperLeft
            : at == end ? upperRight
            : rim.At(at - turned);
        // The back half is the front one turned by half a turn, so that its flat edge faces the other.
        Point Turned(Point point) => new(diameter - point.X, height - point.Y);
    }

    private static Panel Half(PartName part, Point centre, ImmutableArray<Edge> edges) =>
        new()
        {
            Part = part,
            Role = FabricRole.Bottom,
            Edges = edges,
            Match = centre,
        };
}
