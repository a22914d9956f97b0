using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>Parts an outline along one plumb or level line that crosses it twice, as a face is joined from panels or divided for a
/// closure.</summary>
/// <param name="At">Where the line lies.</param>
/// <param name="Before">The edges left of a plumb line or below a level one, counter-clockwise, the line's own edge last.</param>
/// <param name="After">The edges beyond the line, likewise.</param>
/// <param name="Stretches">What each edge has become, in the order of the outline and along each edge.</param>
internal sealed record Parting(Length At, ImmutableArray<Edge> Before, ImmutableArray<Edge> After, ImmutableArray<PartedEdge> Stretches)
{
    /// <summary>What is added to the name of an edge's second stretch on one side of the line.</summary>
    public const EdgeWord Again = EdgeWord.Again;

    // How many nanometres the line may move on until rounded lengths add up.
    private const int Tries = 64;

    // In nanometres: less than the micrometre to which corners are rounded.
    private const long Sliver = 1000;

    /// <summary>Parts along a plumb line.</summary>
    /// <param name="edges">The outline, counter-clockwise.</param>
    /// <param name="at">Where the line lies, to within some nanometres: the parts of a slanted edge must be as long together as the
    /// edge.</param>
    /// <param name="before">Names and finishes the line's edge of the first part.</param>
    /// <param name="after">The same of the second part.</param>
    /// <returns>Null where the line does not part the outline in two. It may run on along an edge, which stays with its own side.</returns>
    public static Parting? Plumb(
        ImmutableArray<Edge> edges,
        Length at,
        (EdgeName Name, EdgeFinish Finish) before,
        (EdgeName Name, EdgeFinish Finish) after
    ) =>
        Nearest(
            at,
            edges.SelectMany(edge => edge.Path.Select(segment => segment.From.X)),
            x => Of(edges, x, point => (point.X - x).Nanometres, Math.PI / 2, before, after)
        );

    /// <summary>Parts along a level line, as <see cref="Plumb"/> does along a plumb one.</summary>
    public static Parting? Level(
        ImmutableArray<Edge> edges,
        Length at,
        (EdgeName Name, EdgeFinish Finish) before,
        (EdgeName Name, EdgeFinish Finish) after
    ) =>
        Nearest(
            at,
            edges.SelectMany(edge => edge.Path.Select(segment => segment.From.Y)),
            y => Of(edges, y, point => (point.Y - y).Nanometres, 0, before, after)
        );

    // A corner that lies all but on the line lies on it, so that no sliver is left.
    private static Parting? Nearest(Length at, IEnumerable<Length> corners, Func<Length, Parting?> parted)
    {
        foreach (Length corner in corners.Where(corner => Math.Abs((corner - at).Nanometres) < Sliver))
        {
            if (parted(corner) is { } parting)
            {
                return parting;
            }
        }

        for (var off = 0; off < Tries; off++)
        {
            if (parted(at + Length.FromNanometres(off)) is { } parting)
            {
                return parting;
            }
        }

        return null;
    }

    // The beyond of a point is above zero on the far side; a curve that runs along the line there has the line's direction.
    private static Parting? Of(
        ImmutableArray<Edge> edges,
        Length at,
        Func<Point, long> beyond,
        double direction,
        (EdgeName Name, EdgeFinish Finish) before,
        (EdgeName Name, EdgeFinish Finish) after
    )
    {
        if (InPieces(edges, beyond, direction) is not { } stretches)
        {
            return null;
        }

        (int one, int other) = (-1, -1);
        for (var i = 0; i < stretches.Count; i++)
        {
            if (stretches[i].IsAfter == stretches[i == 0 ? stretches.Count - 1 : i - 1].IsAfter)
            {
                continue;
            }

            if (other >= 0)
            {
                return null;
            }

            (one, other) = one < 0 ? (i, -1) : (one, i);
        }

        if (other < 0)
        {
            return null;
        }

        var named = new PartedEdge?[stretches.Count];
        ImmutableArray<Edge> first = Closed(one, other, stretches[one].IsAfter ? after : before);
        ImmutableArray<Edge> second = Closed(other, one + stretches.Count, stretches[other].IsAfter ? after : before);
        (ImmutableArray<Edge> low, ImmutableArray<Edge> high) = stretches[one].IsAfter ? (second, first) : (first, second);
        return new Parting(at, low, high, [.. named.OfType<PartedEdge>()]);

        // An edge that is met twice on one side of the line has two names there.
        ImmutableArray<Edge> Closed(int from, int to, (EdgeName Name, EdgeFinish Finish) line)
        {
            var edges = ImmutableArray.CreateBuilder<Edge>(to - from + 1);
            Edge? last = null;
            for (var next = from; next < to; next++)
            {
                int i = next % stretches.Count;
                (Edge edge, Segment path, bool isAfter) = stretches[i];
                if (ReferenceEquals(edge, last))
                {
                    edges[^1] = edges[^1] with { Path = edges[^1].Path.Add(path) };
                    continue;
                }

                EdgeName name = IsNamed(edges, edge.Name) ? edge.Name.With(Again) : edge.Name;
                named[i] = new PartedEdge(edge.Name, name, isAfter);
                // Most edges lie whole on one side.
                edges.Add(name == edge.Name && edge.Path is [var whole] && whole == path ? edge : edge with { Name = name, Path = [path] });
                last = edge;
            }

            edges.Add(new Edge(line.Name, edges[^1].To, edges[0].From, line.Finish));
            return edges.DrainToImmutable();
        }
    }

    private static bool IsNamed(ImmutableArray<Edge>.Builder edges, EdgeName name)
    {
        foreach (Edge edge in edges)
        {
            if (edge.Name == name)
            {
                return true;
            }
        }

        return false;
    }

    // The edges in pieces that lie on one side of the line each, in the order of the outline; null where a crossing would be rounded so
    // that a piece is longer or shorter than what it was cut from.
    private static List<(Edge Edge, Segment Path, bool IsAfter)>? InPieces(
        ImmutableArray<Edge> edges,
        Func<Point, long> beyond,
        double direction
    )
    {
        var stretches = new List<(Edge Edge, Segment Path, bool IsAfter)>(edges.Length + 2);
        foreach (Edge edge in edges)
        {
            foreach (Segment segment in edge.Path)
            {
                ImmutableArray<Segment> parts = SegmentCrossing.Parts(segment, beyond, direction);
                if (parts.Length > 1 && Segment.LengthOf(parts) != segment.Length)
                {
                    return null;
                }

                foreach (Segment part in parts)
                {
                    (long from, long middle, long to) = (
                        SegmentCrossing.Beyond(part.From, beyond),
                        beyond(part.At(0.5)),
                        SegmentCrossing.Beyond(part.To, beyond)
                    );
                    // Counter-clockwise, the panel lies on the left of an edge: an edge on the line belongs to the side that lies there.
                    bool isAfter =
                        from == 0 && middle == 0 && to == 0
                            ? part.To.Y < part.From.Y || part.To.X > part.From.X
                            : from + to > 0 || (from + to == 0 && middle > 0);
                    stretches.Add((edge, part, isAfter));
                }
            }
        }

        return stretches;
    }
}
