using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Cutting;

/// <summary>Replaces the strips of a pattern that are too long for their cloth, and the faces that may be joined, by narrower panels and the
/// seams that join them.</summary>
internal static class PiecedPattern
{
    /// <summary>The pattern with every strip no longer than its cloth allows.</summary>
    /// <param name="pattern">A pattern that closes.</param>
    /// <param name="seam">Seam allowance of the joins.</param>
    /// <param name="usableFor">How long a strip of a role may be cut.</param>
    /// <param name="joinsOf">Where a panel that is no strip is joined, from its left edge; empty where it is not.</param>
    public static Pattern Of(Pattern pattern, Length seam, Func<FabricRole, Length> usableFor, Func<Panel, ImmutableArray<Length>> joinsOf)
    {
        var parts = new Dictionary<string, ImmutableArray<Panel>>();
        var edges = new Dictionary<EdgeRef, ImmutableArray<EdgeRef>>();
        foreach (Panel panel in pattern.Panels)
        {
            Length usable = usableFor(panel.Role);
            if (panel.Stretches is { } stretches && usable > 4 * seam && panel.Width + 2 * seam > usable)
            {
                parts[panel.Part] = Split(panel, StripPiecing.Joins(stretches, usable, seam), EdgeFinish.Seam(seam), edges);
            }
            else if (panel.Stretches is null && joinsOf(panel) is { IsEmpty: false } joined)
            {
                parts[panel.Part] = Split(panel, joined, EdgeFinish.Seam(seam), edges);
            }
        }

        if (parts.Count == 0)
        {
            return pattern;
        }

        ImmutableArray<EdgeRef> Now(ImmutableArray<EdgeRef> refs) =>
            [.. refs.SelectMany(edge => edges.TryGetValue(edge, out ImmutableArray<EdgeRef> now) ? now : [edge])];
        IEnumerable<Seam> joins = parts.Values.SelectMany(panels => panels.Zip(panels.Skip(1), (left, right) =>
            new Seam(SeamKind.StripJoin, new EdgeRef(left.Part, "end"), new EdgeRef(right.Part, "start"))));
        return new Pattern(
            [.. pattern.Panels.SelectMany(panel => parts.TryGetValue(panel.Part, out ImmutableArray<Panel> now) ? now : [panel])],
            [.. joins, .. pattern.Seams.Select(joined => joined with { One = Now(joined.One), Other = Now(joined.Other) })]).Closed();
    }

    private static ImmutableArray<Panel> Split(
        Panel panel, ImmutableArray<Length> joins, EdgeFinish joinFinish, Dictionary<EdgeRef, ImmutableArray<EdgeRef>> edges)
    {
        var panels = ImmutableArray.CreateBuilder<Panel>();
        var from = Length.Zero;
        for (var i = 0; i <= joins.Length; i++)
        {
            Length to = i == joins.Length ? panel.Width : joins[i];
            string part = $"{panel.Part}-{i + 1}";
            ImmutableArray<Edge> built = Part(panel, from, to, i == 0, i == joins.Length, joinFinish);
            (Length start, Length stop, bool last) = (from, to, i == joins.Length);
            bool Holds(Point point) => point.X >= start && (point.X < stop || (last && point.X == stop));
            panels.Add(panel with
            {
                Part = part,
                Edges = built,
                Stretches = null,
                Marks = [.. panel.Marks.Where(mark => IsAlong(mark) || Holds(mark.From)).Select(mark => Moved(mark, start, stop))],
                Match = panel.Match is { } match && (panel.Stretches is null || Holds(match)) ? match.Moved(-start, Length.Zero) : null,
            });
            Record(panel, part, built, edges);
            from = to;
        }

        return panels.ToImmutable();
    }

    // From one join to the next, walking round from the lower left corner; only the outermost parts keep the panel's own ends.
    private static ImmutableArray<Edge> Part(Panel panel, Length from, Length to, bool first, bool last, EdgeFinish join)
    {
        var outline = new PanelOutline();
        var right = false;
        foreach (Edge edge in panel.Edges.OrderBy(edge => (edge.Facing, Along(edge))))
        {
            if (edge.Facing == EdgeFacing.Up && !last && !right)
            {
                (outline, right) = (outline.North("end", panel.Height, join), true);
            }

            outline = edge.Facing switch
            {
                EdgeFacing.Down => outline.East(edge.Name, Shared(edge.From.X, edge.To.X, from, to), edge.Finish),
                EdgeFacing.Right => last ? outline.North(edge.Name, edge.Length, edge.Finish) : outline,
                EdgeFacing.Up => outline.West(edge.Name, Shared(edge.To.X, edge.From.X, from, to), edge.Finish),
                _ => first ? outline.South(edge.Name, edge.Length, edge.Finish) : outline,
            };
        }

        return (first ? outline : outline.South("start", panel.Height, join)).Edges();
    }

    private static long Along(Edge edge) => edge.Facing switch
    {
        EdgeFacing.Down => edge.From.X.Nanometres,
        EdgeFacing.Right => edge.From.Y.Nanometres,
        EdgeFacing.Up => -edge.From.X.Nanometres,
        _ => -edge.From.Y.Nanometres,
    };

    // A line along the strip goes on from piece to piece.
    private static bool IsAlong(PanelMark mark) => mark.To is { } to && to.Y == mark.From.Y && to.X > mark.From.X;

    private static PanelMark Moved(PanelMark mark, Length start, Length stop) => IsAlong(mark)
        ? mark with
        {
            From = mark.From with { X = Length.Max(mark.From.X, start) - start },
            To = mark.To!.Value with { X = Length.Min(mark.To.Value.X, stop) - start },
        }
        : mark with { From = mark.From.Moved(-start, Length.Zero), To = mark.To?.Moved(-start, Length.Zero) };

    private static Length Shared(Length edgeFrom, Length edgeTo, Length from, Length to) =>
        Length.Max(Length.Zero, Length.Min(edgeTo, to) - Length.Max(edgeFrom, from));

    private static void Record(Panel panel, string part, ImmutableArray<Edge> built, Dictionary<EdgeRef, ImmutableArray<EdgeRef>> edges)
    {
        // The ends are recorded anew by each piece, so that the last end stands; the first start must.
        foreach (Edge edge in built)
        {
            (EdgeRef old, EdgeRef now) = (new EdgeRef(panel.Part, edge.Name), new EdgeRef(part, edge.Name));
            bool known = edges.TryGetValue(old, out ImmutableArray<EdgeRef> pieces);
            edges[old] = edge.Name switch
            {
                "start" when known => pieces,
                "end" => [now],
                _ => known ? pieces.Add(now) : [now],
            };
        }
    }
}
