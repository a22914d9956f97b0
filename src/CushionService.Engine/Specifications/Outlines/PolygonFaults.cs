using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>Why a list of corners is no outline that can be cut.</summary>
internal static class PolygonFaults
{
    private static readonly Length ShortestSide = Length.FromInches(0.25m);

    // The straight pieces that an arc is taken as, where sides are tried for crossings.
    private const int PiecesOfAnArc = 8;

    /// <summary>What is wrong with corners, counter-clockwise.</summary>
    /// <param name="corners">The corners.</param>
    /// <param name="radii">The radius of each.</param>
    /// <param name="sweeps">The angle that the side after each turns through.</param>
    public static IEnumerable<OutlineFault> Of(ImmutableArray<Point> corners, ImmutableArray<Length> radii, ImmutableArray<double> sweeps)
    {
        // In this order: a crossing is sought only among sides that have a direction, and roundings only where sides do
        // not cross.
        if (TooClose(corners) is { } close)
        {
            return [new OutlineFault("Points", null, close)];
        }

        if (Crossing(corners, sweeps) is { } crossing)
        {
            return [new OutlineFault("Points", null, crossing)];
        }

        bool areSame = radii.All(radius => radius == radii[0]);
        return areSame && LargestRadius(corners) is var largest
            ? radii[0] >= largest
                ? [new OutlineFault("CornerRadius", largest, OutlineTexts.CornerRadiusToSide(largest))]
                : []
            : UsedUp(corners, radii);
    }

    // Corners are counted from 1 in what people read.
    private static Message? TooClose(ImmutableArray<Point> corners)
    {
        int count = corners.Length;
        for (var i = 0; i < count; i++)
        {
            if (new Segment(corners[i], corners[(i + 1) % count]) is var side && (side.From == side.To || side.Length < ShortestSide))
            {
                return OutlineTexts.PointsTooClose(i + 1, ((i + 1) % count) + 1, ShortestSide);
            }
        }

        return null;
    }

    private static Message? Crossing(ImmutableArray<Point> corners, ImmutableArray<double> sweeps)
    {
        // Arcs in straight pieces; each point with the side that it lies on.
        (int Side, Point At)[] points =
        [
            .. Enumerable
                .Range(0, corners.Length)
                .SelectMany(i =>
                    sweeps[i] == 0
                        ? [(i, corners[i])]
                        : Enumerable
                            .Range(0, PiecesOfAnArc)
                            .Select(part =>
                                (i, new Segment(corners[i], corners[(i + 1) % corners.Length], sweeps[i]).At((double)part / PiecesOfAnArc))
                            )
                ),
        ];
        ImmutableArray<Point> all = [.. points.Select(point => point.At)];
        for (var i = 0; i < all.Length; i++)
        {
            for (var j = i + 1; j < all.Length; j++)
            {
                if (Crosses(all, i, j))
                {
                    return OutlineTexts.SidesCross(points[i].Side + 1, points[j].Side + 1);
                }
            }
        }

        return null;
    }

    // A side that its two roundings use up, by the second of them.
    // A rounding takes r · |tan(turn / 2)| from each of the two sides at its corner (general geometry).
    private static IEnumerable<OutlineFault> UsedUp(ImmutableArray<Point> corners, ImmutableArray<Length> radii)
    {
        int count = corners.Length;
        for (var i = 0; i < count; i++)
        {
            Point before = corners[(i + count - 1) % count],
                from = corners[i],
                to = corners[(i + 1) % count],
                after = corners[(i + 2) % count];
            double free = new Segment(from, to).Length.Nanometres - (radii[i].Nanometres * Tangent(before, from, to)),
                tangent = Tangent(from, to, after);
            int next = (i + 1) % count;
            if (radii[next] > Length.Zero && radii[next].Nanometres * tangent >= free)
            {
                var limit = Length.FromNanometres((long)Math.Max(0, free / tangent));
                yield return new OutlineFault($"Corners[{next}]", limit, OutlineTexts.CornersOnSide(limit));
            }
        }
    }

    // The radius of which two roundings use up a side.
    private static Length LargestRadius(ImmutableArray<Point> corners)
    {
        int count = corners.Length;
        double largest = double.MaxValue;
        for (var i = 0; i < count; i++)
        {
            Point before = corners[(i + count - 1) % count],
                from = corners[i],
                to = corners[(i + 1) % count],
                after = corners[(i + 2) % count];
            double used = Tangent(before, from, to) + Tangent(from, to, after);
            largest = used == 0 ? largest : Math.Min(largest, new Segment(from, to).Length.Nanometres / used);
        }

        return Length.FromNanometres((long)Math.Min(largest, Length.FromInches(60).Nanometres));
    }

    // What a rounding of radius 1 takes from the side before the corner, and from the one after.
    private static double Tangent(Point before, Point corner, Point after)
    {
        double turn = Math.IEEERemainder(
            new Segment(corner, after).StartDirection - new Segment(before, corner).StartDirection,
            2 * Math.PI
        );
        return Math.Abs(Math.Tan(turn / 2));
    }

    // Exact, in whole nanometres: two sides meet if the ends of each lie on different sides of the other, or an end lies
    // on it.
    private static bool Crosses(ImmutableArray<Point> corners, int i, int j)
    {
        int count = corners.Length;
        (Point a, Point b, Point c, Point d) = (corners[i], corners[(i + 1) % count], corners[j], corners[(j + 1) % count]);
        if (j == i + 1 || (i == 0 && j == count - 1))
        {
            // Neighbours share a corner; they may not fold back on each other.
            (Point shared, Point one, Point other) = j == i + 1 ? (b, a, d) : (a, b, c);
            return Turn(one, shared, other) == 0 && Dot(shared, one, other) > 0;
        }

        int abc = Turn(a, b, c),
            abd = Turn(a, b, d),
            cda = Turn(c, d, a),
            cdb = Turn(c, d, b);
        return (abc * abd < 0 && cda * cdb < 0)
            || (abc == 0 && Between(a, b, c))
            || (abd == 0 && Between(a, b, d))
            || (cda == 0 && Between(c, d, a))
            || (cdb == 0 && Between(c, d, b));
    }

    // 1 when c is left of a → b, −1 right, 0 on its line; 128 bits hold any product of two lengths.
    private static int Turn(Point a, Point b, Point c) =>
        Int128.Sign(((Int128)(b.X - a.X).Nanometres * (c.Y - a.Y).Nanometres) - ((Int128)(b.Y - a.Y).Nanometres * (c.X - a.X).Nanometres));

    private static int Dot(Point at, Point one, Point other) =>
        Int128.Sign(
            ((Int128)(one.X - at.X).Nanometres * (other.X - at.X).Nanometres)
                + ((Int128)(one.Y - at.Y).Nanometres * (other.Y - at.Y).Nanometres)
        );

    // For a point that is on the line of a and b: whether it is between them.
    private static bool Between(Point a, Point b, Point c) =>
        c.X >= Length.Min(a.X, b.X) && c.X <= Length.Max(a.X, b.X) && c.Y >= Length.Min(a.Y, b.Y) && c.Y <= Length.Max(a.Y, b.Y);
}
