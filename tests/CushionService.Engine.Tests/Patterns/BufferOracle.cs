using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace CushionService.Engine.Tests.Patterns;

/// <summary>The cut outline of a panel, in inches, by NetTopologySuite: the finished outline's buffer with mitred corners, cut off at two
/// distances; where edges have different allowances, the outline with a buffer's side on each edge.</summary>
internal static class BufferOracle
{
    private const double Slack = 1.5e-2;

    private const double Inch = 25_400_000;
    private const int PiecesOfAnArc = 60;
    private static readonly GeometryFactory Factory = new();
    private static readonly BufferParameters Mitred = new(8, EndCapStyle.Flat, JoinStyle.Mitre, 2);

    /// <summary>What a chord leaves of an arc where it ends in a mitred corner, in square inches: more under a deep hem.</summary>
    public static double SlackOf(CutPiece piece)
    {
        double deepest = piece.Panel!.Edges.Max(edge => edge.Finish.Allowance.Nanometres) / Inch;
        return Slack
            + (
                piece.Panel.Edges.All(edge => edge.Path.All(segment => segment.IsStraight))
                    ? 0
                    : deepest * deepest * Math.PI / (2 * PiecesOfAnArc)
            );
    }

    /// <summary>Area of the buffer, and of what of it the piece leaves bare, in square inches.</summary>
    public static (double Area, double Bare) Of(CutPiece piece)
    {
        NetTopologySuite.Geometries.Geometry made = Cut(piece.Panel!);
        double x = piece.Origin.X.Nanometres / Inch,
            y = piece.Origin.Y.Nanometres / Inch,
            width = piece.Width.Nanometres / Inch,
            length = piece.Length.Nanometres / Inch;
        Coordinate[] corners = piece.Outline.IsEmpty
            ? [new(-x, -y), new(width - x, -y), new(width - x, length - y), new(-x, length - y), new(-x, -y)]
            :
            [
                .. piece
                    .Outline.Append(piece.Outline[0])
                    .Select(corner => new Coordinate((corner.X.Nanometres / Inch) - x, (corner.Y.Nanometres / Inch) - y)),
            ];
        NetTopologySuite.Geometries.Geometry cut = Factory.CreatePolygon(corners);
        return (made.Area, cut.IsValid ? made.Difference(cut).Area : made.Area);
    }

    private static NetTopologySuite.Geometries.Geometry Cut(Panel panel)
    {
        double[] allowances = [.. panel.Edges.Select(edge => edge.Finish.Allowance.Nanometres / Inch)];
        NetTopologySuite.Geometries.Geometry outline = Factory.CreatePolygon([
            .. panel.Edges.SelectMany(Points),
            Point(panel.Edges[0].From),
        ]);
        if (panel.TakeUpAcross + panel.TakeUpAlong > Length.Zero)
        {
            return Factory.ToGeometry(DrawnIn(panel));
        }

        if (allowances.Distinct().Count() == 1)
        {
            return BufferOp.Buffer(outline, allowances[0], Mitred);
        }

        double usual = allowances.GroupBy(allowance => allowance).MaxBy(group => group.Count())!.Key;
        int[] odd = [.. Enumerable.Range(0, allowances.Length).Where(i => allowances[i] != usual)];
        if (odd.All(i => panel.Edges[i].Path is [{ IsStraight: true }] && IsSmooth(panel, i - 1) && IsSmooth(panel, i)))
        {
            return odd.Aggregate(BufferOp.Buffer(outline, usual, Mitred), (cut, i) => cut.Union(Beside(panel.Edges[i], allowances[i])));
        }

        if (Enumerable.Range(0, panel.Edges.Length).Any(i => Turn(panel.Edges[i], panel.Edges[(i + 1) % panel.Edges.Length]) < -0.01))
        {
            return Hollow(panel, allowances);
        }

        // Convex panels with edges of different allowances: what lies on the inner side of every edge's own line.
        NetTopologySuite.Geometries.Geometry cut = Factory.ToGeometry(new Envelope(-500, 500, -500, 500));
        foreach (Edge edge in panel.Edges)
        {
            double allowance = edge.Finish.Allowance.Nanometres / Inch;
            Coordinate[] points = [.. Points(edge), Point(edge.To)];
            for (var i = 0; i + 1 < points.Length; i++)
            {
                // Pieces of a nanometre have no direction.
                cut = points[i].Distance(points[i + 1]) < 1e-6 ? cut : cut.Intersection(InnerSide(points[i], points[i + 1], allowance));
            }
        }

        return cut;
    }

    // What is quilted flat is a rectangle until it is drawn in; each of its sides has the deepest allowance that is there.
    private static Envelope DrawnIn(Panel panel)
    {
        double Deepest(double direction) =>
            panel
                .Edges.Where(edge => Math.Cos(edge.Path[0].StartDirection - direction) > 0.8)
                .Max(edge => edge.Finish.Allowance.Nanometres / Inch);
        double width = (panel.Width + panel.TakeUpAcross).Nanometres / Inch,
            height = (panel.Height + panel.TakeUpAlong).Nanometres / Inch;
        return new(-Deepest(-Math.PI / 2), width + Deepest(Math.PI / 2), -Deepest(0), height + Deepest(Math.PI));
    }

    // Where one edge goes on into the next, the allowance steps square to both.
    private static bool IsSmooth(Panel panel, int i) =>
        Math.Abs(Turn(panel.Edges[(i + panel.Edges.Length) % panel.Edges.Length], panel.Edges[(i + 1) % panel.Edges.Length])) < 0.01;

    private static NetTopologySuite.Geometries.Polygon Beside(Edge edge, double allowance)
    {
        Coordinate from = Point(edge.From),
            to = Point(edge.To);
        double length = from.Distance(to),
            outX = (to.Y - from.Y) / length * allowance,
            outY = (from.X - to.X) / length * allowance;
        return Factory.CreatePolygon([from, new(from.X + outX, from.Y + outY), new(to.X + outX, to.Y + outY), to, from]);
    }

    private static double Turn(Edge edge, Edge next) =>
        Math.IEEERemainder(next.Path[0].StartDirection - edge.Path[^1].EndDirection, 2 * Math.PI);

    // A hollow panel whose one straight edge has another allowance: the edge is moved out along its neighbours, and the rest is a buffer.
    private static NetTopologySuite.Geometries.Geometry Hollow(Panel panel, double[] allowances)
    {
        double usual = allowances.GroupBy(allowance => allowance).MaxBy(group => group.Count())!.Key;
        int odd = Assert.Single(Enumerable.Range(0, allowances.Length), i => allowances[i] != usual);
        Edge edge = panel.Edges[odd],
            before = panel.Edges[(odd + allowances.Length - 1) % allowances.Length],
            after = panel.Edges[(odd + 1) % allowances.Length];
        double outward = edge.Path[0].StartDirection - (Math.PI / 2),
            by = allowances[odd] - usual;
        Coordinate Moved(Coordinate from, double direction)
        {
            double along = by / Math.Cos(direction - outward);
            return new(from.X + (along * Math.Cos(direction)), from.Y + (along * Math.Sin(direction)));
        }

        Coordinate from = Moved(Point(edge.From), before.Path[^1].EndDirection),
            to = Moved(Point(edge.To), after.Path[0].StartDirection + Math.PI);
        Coordinate[] points =
        [
            .. Enumerable
                .Range(0, allowances.Length)
                .SelectMany(i =>
                    i == odd ? [from]
                    : i == (odd + 1) % allowances.Length ? [to, .. Points(panel.Edges[i]).Skip(1)]
                    : Points(panel.Edges[i])
                ),
        ];
        return BufferOp.Buffer(Factory.CreatePolygon([.. points, points[0]]), usual, Mitred);
    }

    private static NetTopologySuite.Geometries.Polygon InnerSide(Coordinate from, Coordinate to, double allowance)
    {
        double length = from.Distance(to),
            dx = (to.X - from.X) / length,
            dy = (to.Y - from.Y) / length;
        Coordinate At(double along, double inward) => new(from.X + (along * dx) - (inward * dy), from.Y + (along * dy) + (inward * dx));
        return Factory.CreatePolygon([At(-900, -allowance), At(900, -allowance), At(900, 900), At(-900, 900), At(-900, -allowance)]);
    }

    private static IEnumerable<Coordinate> Points(Edge edge) =>
        edge.Path.SelectMany(segment =>
            segment.IsStraight
                ? [Point(segment.From)]
                : Enumerable.Range(0, PiecesOfAnArc).Select(i => Point(segment.At((double)i / PiecesOfAnArc)))
        );

    private static Coordinate Point(Engine.Geometry.Point point) => new(point.X.Nanometres / Inch, point.Y.Nanometres / Inch);
}
