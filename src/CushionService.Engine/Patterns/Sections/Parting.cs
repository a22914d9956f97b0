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
    ) => Nearest(edges, new CrossingLine(IsPlumb: true, at), before, after);

    /// <summary>Parts along a level line, as <see cref="Plumb"/> does along a plumb one.</summary>
    public static Parting? Level(
        ImmutableArray<Edge> edges,
        Length at,
        (EdgeName Name, EdgeFinish Finish) before,
        (EdgeName Name, EdgeFinish Finish) after
    ) => Nearest(edges, new CrossingLine(IsPlumb: false, at), before, after);

    // A corner that lies all but on the line lies on it, so that no sliver is left.
    private static Parting? Nearest(
        ImmutableArray<Edge> edges,
        CrossingLine line,
        (EdgeName Name, EdgeFinish Finish) before,
        (EdgeName Name, EdgeFinish Finish) after
    )
    {
        foreach (Edge edge in edges)
        {
            foreach (Segment segment in edge.Path)
            {
                if (line.IsAllButOn(segment.From) && Of(edges, line with { At = line.Across(segment.From) }, before, after) is { } parting)
                {
                    return parting;
                }
            }
        }

        for (var off = 0; off < Tries; off++)
        {
            if (Of(edges, line with { At = line.At + Length.FromNanometres(off) }, before, after) is { } parting)
            {
                return parting;
            }
        }

        return null;
    }

    private static Parting? Of(
        ImmutableArray<Edge> edges,
        CrossingLine line,
        (EdgeName Name, EdgeFinish Finish) before,
        (EdgeName Name, EdgeFinish Finish) after
    )
    {
        if (InPieces(edges, line) is not { } stretches)
        {
            return null;
        }

        if (Sides(stretches) is not (var one, var other))
        {
            return null;
        }

        var named = new PartedEdge?[stretches.Count];
        ImmutableArray<Edge> first = Closed(one, other, stretches[one].IsAfter ? after : before);
        ImmutableArray<Edge> second = Closed(other, one + stretches.Count, stretches[other].IsAfter ? after : before);
        (ImmutableArray<Edge> low, ImmutableArray<Edge> high) = stretches[one].IsAfter ? (second, first) : (first, second);
        return new Parting(line.At, low, high, Met(named));

        // An edge that is met twice on one side of the line has two names there.
        ImmutableArray<Edge> Closed(int from, int to, (EdgeName Name, EdgeFinish Finish) join)
        {
            var edges = ImmutableArray.CreateBuilder<Edge>(to - from + 1);
            Edge? last = null;
            for (var next = from; next < to; next++)
            {
                int i = next % stretches.Count;
                (Edge edge, Segment path, bool isAfter, Length along) = stretches[i];
                if (ReferenceEquals(edge, last))
                {
                    edges[^1] = edges[^1] with { Path = edges[^1].Path.Add(path) };
                    continue;
                }

                EdgeName name = IsNamed(edges, edge.Name) ? edge.Name.With(Again) : edge.Name;
                named[i] = new PartedEdge(edge.Name, name, isAfter);
                // Most edges lie whole on one side.
                edges.Add(
                    name == edge.Name && edge.Path is [var whole] && whole == path
                        ? edge
                        : edge with
                        {
                            Name = name,
                            Path = [path],
                            Stretch = edge.StretchAt(along),
                        }
                );
                last = edge;
            }

            edges.Add(new Edge(join.Name, edges[^1].To, edges[0].From, join.Finish));
            return edges.DrainToImmutable();
        }
    }

    // Where the stretches of each side of the line begin; null when the line is not crossed exactly twice.
    private static (int One, int Other)? Sides(List<(Edge Edge, Segment Path, bool IsAfter, Length Along)> stretches)
    {
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

        return other < 0 ? null : (one, other);
    }

    // A stretch that went on with the one before has no name of its own.
    private static ImmutableArray<PartedEdge> Met(PartedEdge?[] named)
    {
        var met = ImmutableArray.CreateBuilder<PartedEdge>(named.Length);
        foreach (PartedEdge? one in named)
        {
            if (one is { } edge)
            {
                met.Add(edge);
            }
        }

        return met.DrainToImmutable();
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
    private static List<(Edge Edge, Segment Path, bool IsAfter, Length Along)>? InPieces(ImmutableArray<Edge> edges, CrossingLine line)
    {
        var stretches = new List<(Edge Edge, Segment Path, bool IsAfter, Length Along)>(edges.Length + 2);
        foreach (Edge edge in edges)
        {
            Length along = Length.Zero;
            foreach (Segment segment in edge.Path)
            {
                if (SegmentCrossing.IsOnOneSide(segment, line))
                {
                    stretches.Add((edge, segment, IsBeyond(segment, line), along));
                    along += segment.Length;
                    continue;
                }

                ImmutableArray<Segment> parts = SegmentCrossing.Parts(segment, line);
                if (parts.Length > 1 && Segment.LengthOf(parts) != segment.Length)
                {
                    return null;
                }

                foreach (Segment part in parts)
                {
                    stretches.Add((edge, part, IsBeyond(part, line), along));
                    along += part.Length;
                }
            }
        }

        return stretches;
    }

    // Of a segment that does not cross the line.
    private static bool IsBeyond(Segment part, CrossingLine line)
    {
        (long from, long to) = (line.BeyondOrOn(part.From), line.BeyondOrOn(part.To));
        if (from + to != 0)
        {
            return from + to > 0;
        }

        long middle = line.Beyond(part.At(0.5));
        // Counter-clockwise, the panel lies on the left of an edge: an edge on the line belongs to the side that lies there.
        return from == 0 && middle == 0 ? part.To.Y < part.From.Y || part.To.X > part.From.X : middle > 0;
    }
}
