using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>Any simple polygon, its corners sharp or rounded the same. A side belongs to the side of the cushion that it faces; those that
/// face the back most squarely are the back.</summary>
public sealed record PolygonOutline : Outline
{
    /// <summary>How far from zero a corner may be: 2 000 in (a limit of ours; larger than any outline).</summary>
    public static Length Furthest { get; } = Length.FromInches(2000);

    private readonly ImmutableArray<Point> _corners;
    private readonly Length _radius;

    /// <summary>A polygon.</summary>
    /// <param name="corners">At least three, counter-clockwise, of a polygon that does not cross itself.</param>
    /// <param name="cornerRadius">At least zero; so small that no side is used up.</param>
    public PolygonOutline(ImmutableArray<Point> corners, Length cornerRadius)
    {
        var low = new Point(corners.Min(corner => corner.X), corners.Min(corner => corner.Y));
        _corners = [.. corners.Select(corner => corner.Moved(-low.X, -low.Y))];
        _radius = cornerRadius;
    }

    /// <inheritdoc />
    public override OutlineKind Kind => OutlineKind.Polygon;

    /// <inheritdoc />
    public override Length Width => _corners.Max(corner => corner.X);

    /// <inheritdoc />
    public override Length Depth => _corners.Max(corner => corner.Y);

    /// <inheritdoc />
    public override bool IsSymmetric => false;

    /// <inheritdoc />
    public override IEnumerable<OutlineFault> Faults() => PolygonFaults.Of(_corners, _radius);

    /// <inheritdoc />
    protected override ImmutableArray<OutlineSide> Draw()
    {
        int count = _corners.Length;
        double[] facing = [.. Enumerable.Range(0, count).Select(i => Facing(_corners[i], _corners[(i + 1) % count]))];
        double back = facing.Max(angle => Math.Sin(angle)),
            front = facing.Min(angle => Math.Sin(angle));
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
                    Path(i, count)
                )),
        ];
    }

    private static double Facing(Point from, Point to) => new Segment(from, to).StartDirection - (Math.PI / 2);

    // The line between two roundings, and the rounding at its end.
    private ImmutableArray<Segment> Path(int i, int count)
    {
        Point from = _corners[i],
            to = _corners[(i + 1) % count],
            after = _corners[(i + 2) % count],
            before = _corners[(i + count - 1) % count];
        if (_radius == Length.Zero)
        {
            return [new Segment(from, to)];
        }

        Point start = Trimmed(from, to, Turn(before, from, to)),
            end = Trimmed(to, from, Turn(from, to, after));
        Point next = Trimmed(to, after, Turn(from, to, after));
        double sweep = Turn(from, to, after);
        return start == end ? [new Segment(end, next, sweep)] : [new Segment(start, end), new Segment(end, next, sweep)];
    }

    // A rounding of radius r between two sides that turn by an angle takes r tan(angle / 2) from each.
    private Point Trimmed(Point corner, Point toward, double turn)
    {
        var side = new Segment(corner, toward);
        return side.At(Math.Min(1, _radius.Nanometres * Math.Abs(Math.Tan(turn / 2)) / side.Length.Nanometres));
    }

    private static double Turn(Point before, Point corner, Point after) =>
        Math.IEEERemainder(new Segment(corner, after).StartDirection - new Segment(before, corner).StartDirection, 2 * Math.PI);
}
