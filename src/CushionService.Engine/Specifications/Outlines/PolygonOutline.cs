using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>Any simple polygon: its corners sharp or rounded, its sides straight or arcs. A side belongs to the side of the cushion that it
/// faces; those that face the back most squarely are the back.</summary>
public sealed record PolygonOutline : Outline
{
    /// <summary>How far from zero a corner may be: 2 000 in (a limit of ours; larger than any outline).</summary>
    public static Length Furthest { get; } = Length.FromInches(2000);

    // Less than this share of an arc is not split from it.
    private const double Sliver = 1e-6;

    // What is narrower can be neither sewn nor filled (common practice, no source).
    private static readonly Length NarrowestMean = Length.FromInches(0.5m);

    private readonly ImmutableArray<Point> _corners;
    private readonly ImmutableArray<Length> _radii;
    private readonly ImmutableArray<double> _sweeps;
    private Point? _extent;

    /// <summary>A polygon of straight sides whose corners have one radius.</summary>
    /// <param name="corners">At least three, counter-clockwise, of a polygon that does not cross itself.</param>
    /// <param name="cornerRadius">At least zero; so small that no side is used up.</param>
    public PolygonOutline(ImmutableArray<Point> corners, Length cornerRadius)
        : this(corners, [.. corners.Select(_ => cornerRadius)], [.. corners.Select(_ => 0.0)]) { }

    /// <summary>A polygon.</summary>
    /// <param name="corners">At least three, counter-clockwise, of a polygon that does not cross itself.</param>
    /// <param name="radii">The radius of each corner, at least zero; zero beside an arc.</param>
    /// <param name="sweeps">The angle that the side after each corner turns through, in radians from −π to π: zero for a straight one,
    /// above zero for one that bulges out.</param>
    public PolygonOutline(ImmutableArray<Point> corners, ImmutableArray<Length> radii, ImmutableArray<double> sweeps) =>
        (_corners, _radii, _sweeps) = (corners, radii, sweeps);

    /// <inheritdoc />
    public override OutlineKind Kind => OutlineKind.Polygon;

    /// <inheritdoc />
    public override Length Width => Extent.X;

    /// <inheritdoc />
    public override Length Depth => Extent.Y;

    /// <inheritdoc />
    public override bool IsSymmetric => false;

    // Arcs are split where they reach furthest, so the ends of segments tell.
    private Point Extent =>
        _extent ??= Sides
            .SelectMany(side => side.Path)
            .Aggregate(new Point(), (far, segment) => new Point(Length.Max(far.X, segment.To.X), Length.Max(far.Y, segment.To.Y)));

    /// <summary>The angle that an arc over a chord turns through: 4 atan(2b / c) (general geometry).</summary>
    /// <param name="chord">The chord, c; above zero.</param>
    /// <param name="bulge">How far its middle is out of the chord, b; below zero for an arc that hollows the outline.</param>
    public static double SweepOf(Length chord, Length bulge) => 4 * Math.Atan2(2.0 * bulge.Nanometres, chord.Nanometres);

    /// <summary>The angle that an arc of a radius over a chord turns through, at most half a circle: 2 asin(c / 2r) (general
    /// geometry).</summary>
    /// <param name="chord">The chord, c; above zero.</param>
    /// <param name="radius">The radius, r, at least half the chord; below zero for an arc that hollows the outline.</param>
    public static double SweepOfRadius(Length chord, Length radius) => 2 * Math.Asin(chord.Nanometres / (2.0 * radius.Nanometres));

    /// <inheritdoc />
    public override IEnumerable<OutlineFault> Faults() =>
        PolygonFaults.Of(_corners, _radii, _sweeps) is var faults && faults.Any() ? faults : Narrow();

    // A long strip is as wide as twice its area over its perimeter, and no outline is narrower than that (general geometry).
    private IEnumerable<OutlineFault> Narrow()
    {
        double width = 2 * (double)Area.SquareNanometres / Perimeter.Nanometres;
        if (width < NarrowestMean.Nanometres)
        {
            yield return new OutlineFault("Points", null, OutlineTexts.TooNarrow(Length.FromNanometres((long)width), NarrowestMean));
        }
    }

    /// <inheritdoc />
    protected override ImmutableArray<OutlineSide> Draw()
    {
        int count = _corners.Length;
        double[] facing = [.. Enumerable.Range(0, count).Select(i => Facing(_corners[i], _corners[(i + 1) % count]))];
        double back = facing.Max(angle => Math.Sin(angle)),
            front = facing.Min(angle => Math.Sin(angle));
        ImmutableArray<Segment>[] paths = [.. Enumerable.Range(0, count).Select(i => Path(i, count))];
        Length left = -paths.Min(path => path.Min(segment => segment.From.X)),
            down = -paths.Min(path => path.Min(segment => segment.From.Y));
        return
        [
            .. Enumerable
                .Range(0, count)
                .Select(i => new OutlineSide(
                    new EdgeName(EdgeWord.Side, i + 1),
                    Math.Sin(facing[i]) > back - 1e-6 ? Side.Back
                        : Math.Sin(facing[i]) < front + 1e-6 ? Side.Front
                        : Math.Cos(facing[i]) > 0 ? Side.Right
                        : Side.Left,
                    [
                        .. paths[i]
                            .Select(segment => segment with { From = segment.From.Moved(left, down), To = segment.To.Moved(left, down) }),
                    ]
                )),
        ];
    }

    private static double Facing(Point from, Point to) => new Segment(from, to).StartDirection - (Math.PI / 2);

    // An arc, or the line between two roundings and the rounding at its end.
    private ImmutableArray<Segment> Path(int i, int count)
    {
        Point from = _corners[i],
            to = _corners[(i + 1) % count],
            after = _corners[(i + 2) % count],
            before = _corners[(i + count - 1) % count];
        if (_sweeps[i] != 0)
        {
            return [.. AtExtremes(new Segment(from, to, _sweeps[i]))];
        }

        Length atStart = _radii[i],
            atEnd = _radii[(i + 1) % count];
        double sweep = Turn(from, to, after);
        Point start = Trimmed(from, to, Turn(before, from, to), atStart),
            end = Trimmed(to, from, sweep, atEnd),
            next = Trimmed(to, after, sweep, atEnd);
        return
        [
            .. start == end ? Array.Empty<Segment>() : [new Segment(start, end)],
            .. end == next ? Array.Empty<Segment>() : AtExtremes(new Segment(end, next, sweep)),
        ];
    }

    // The arc in parts, split where it reaches furthest left, right, front or back.
    private static IEnumerable<Segment> AtExtremes(Segment arc)
    {
        const double quarter = Math.PI / 2;
        double start = arc.StartDirection,
            end = start + arc.Sweep;
        double[] shares =
        [
            .. Enumerable
                .Range(-8, 17)
                .Select(turn => ((turn * quarter) - start) / (end - start))
                .Where(share => share > Sliver && share < 1 - Sliver)
                .Order(),
        ];
        double done = 0;
        foreach (double share in shares)
        {
            (Segment before, arc) = arc.Split((share - done) / (1 - done));
            done = share;
            yield return before;
        }

        yield return arc;
    }

    // A rounding of radius r between two sides that turn by an angle takes r tan(angle / 2) from each.
    private static Point Trimmed(Point corner, Point toward, double turn, Length radius)
    {
        if (radius == Length.Zero)
        {
            return corner;
        }

        var side = new Segment(corner, toward);
        return side.At(Math.Min(1, radius.Nanometres * Math.Abs(Math.Tan(turn / 2)) / side.Length.Nanometres));
    }

    private static double Turn(Point before, Point corner, Point after) =>
        Math.IEEERemainder(new Segment(corner, after).StartDirection - new Segment(before, corner).StartDirection, 2 * Math.PI);
}
