using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Cutting;

/// <summary>A panel of any outline in parts from left to right, joined along plumb lines.</summary>
internal sealed class JoinedPanel
{
    private readonly Panel _whole;

    // The stretches of every edge of the whole, in the order of the outline and each edge's along the edge.
    private readonly ImmutableArray<(EdgeName Of, EdgeRef Stretch)> _stretches;

    private JoinedPanel(Panel whole, ImmutableArray<Panel> parts, ImmutableArray<(EdgeName Of, EdgeRef Stretch)> stretches) =>
        (_whole, Parts, _stretches) = (whole, parts, stretches);

    /// <summary>The parts from left to right, at least one, each numbered by its stretch from 1.</summary>
    public ImmutableArray<Panel> Parts { get; }

    /// <summary>Parts a panel.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="joins">Where, from its left edge, in order.</param>
    /// <param name="seam">Seam allowance of the joins.</param>
    /// <returns>Null where a join would not part the outline in two.</returns>
    public static JoinedPanel? Of(Panel panel, ImmutableArray<Length> joins, Length seam)
    {
        var join = EdgeFinish.Seam(seam);
        var parts = ImmutableArray.CreateBuilder<Panel>(joins.Length + 1);
        // What is right of the last join is parted again at the next, and its stretches have no part's name until then.
        var stretches = new List<(EdgeName Of, EdgeRef Stretch)>(panel.Edges.Length + (2 * joins.Length));
        foreach (Edge edge in panel.Edges)
        {
            stretches.Add((edge.Name, new EdgeRef(default, edge.Name)));
        }

        (ImmutableArray<Edge> rest, Length from) = (panel.Edges, Length.Zero);
        foreach (Length at in joins)
        {
            if (Parting.Plumb(rest, at, (EdgeName.End, join), (EdgeName.Start, join)) is not { } parting)
            {
                return null;
            }

            PartName name = panel.Part with { Stretch = parts.Count + 1 };
            stretches = Parted(stretches, parting, name);
            parts.Add(Part(panel, name, parting.Before, from, parting.At));
            (rest, from) = (parting.After, parting.At);
        }

        PartName last = panel.Part with { Stretch = parts.Count + 1 };
        parts.Add(Part(panel, last, rest, from, panel.Width));
        var named = ImmutableArray.CreateBuilder<(EdgeName Of, EdgeRef Stretch)>(stretches.Count);
        foreach ((EdgeName of, EdgeRef stretch) in stretches)
        {
            named.Add((of, stretch.Part != default ? stretch : stretch with { Part = last }));
        }

        return new JoinedPanel(panel, parts.MoveToImmutable(), named.MoveToImmutable());
    }

    // What is left of the line has its part's name now.
    private static List<(EdgeName Of, EdgeRef Stretch)> Parted(
        List<(EdgeName Of, EdgeRef Stretch)> stretches,
        Parting parting,
        PartName before
    )
    {
        var now = new List<(EdgeName Of, EdgeRef Stretch)>(stretches.Count + 2);
        foreach ((EdgeName of, EdgeRef stretch) in stretches)
        {
            if (stretch.Part != default)
            {
                now.Add((of, stretch));
                continue;
            }

            foreach (PartedEdge parted in parting.Stretches)
            {
                if (parted.Of == stretch.Edge)
                {
                    now.Add((of, new EdgeRef(parted.IsAfter ? default : before, parted.Name)));
                }
            }
        }

        return now;
    }

    /// <summary>The pattern with the parts and their joins in the panel's place.</summary>
    /// <param name="pattern">A pattern that has the whole panel.</param>
    /// <returns>A pattern not yet checked: several panels may be replaced before it closes again.</returns>
    /// <remarks>Seams of the whole panel name the edges of its parts instead.</remarks>
    public Pattern In(Pattern pattern)
    {
        var panels = ImmutableArray.CreateBuilder<Panel>(pattern.Panels.Length + Parts.Length - 1);
        foreach (Panel panel in pattern.Panels)
        {
            if (panel.Part == _whole.Part)
            {
                panels.AddRange(Parts);
            }
            else
            {
                panels.Add(panel);
            }
        }

        var seams = ImmutableArray.CreateBuilder<Seam>(pattern.Seams.Length + Parts.Length - 1);
        for (var i = 1; i < Parts.Length; i++)
        {
            seams.Add(
                new Seam(SeamKind.StripJoin, new EdgeRef(Parts[i - 1].Part, EdgeName.End), new EdgeRef(Parts[i].Part, EdgeName.Start))
            );
        }

        foreach (Seam seam in pattern.Seams)
        {
            // Most seams are not of this panel, and stay as they are.
            seams.Add(Names(seam.One) || Names(seam.Other) ? seam with { One = Now(seam.One), Other = Now(seam.Other) } : seam);
        }

        return new Pattern(panels.DrainToImmutable(), seams.MoveToImmutable());
    }

    private bool Names(ImmutableArray<EdgeRef> refs)
    {
        foreach (EdgeRef edge in refs)
        {
            if (edge.Part == _whole.Part)
            {
                return true;
            }
        }

        return false;
    }

    // The same edges, those of the whole by their stretches.
    private ImmutableArray<EdgeRef> Now(ImmutableArray<EdgeRef> refs)
    {
        if (!Names(refs))
        {
            return refs;
        }

        var now = ImmutableArray.CreateBuilder<EdgeRef>(refs.Length + Parts.Length);
        foreach (EdgeRef edge in refs)
        {
            if (edge.Part != _whole.Part)
            {
                now.Add(edge);
                continue;
            }

            foreach ((EdgeName of, EdgeRef stretch) in _stretches)
            {
                if (of == edge.Edge)
                {
                    now.Add(stretch);
                }
            }
        }

        return now.DrainToImmutable();
    }

    // From its own lower left corner.
    private static Panel Part(Panel panel, PartName name, ImmutableArray<Edge> edges, Length from, Length to)
    {
        Point corner = LowerLeft(edges);
        Length left = -corner.X,
            down = -corner.Y;
        // A mark on a join belongs to the part at its right; one on the right edge of all to the last part.
        Length beyond = to == panel.Width ? to + Length.FromNanometres(1) : to;
        return panel with
        {
            Part = name,
            Edges = corner == default ? edges : [.. edges.Select(edge => edge.Moved(left, down))],
            Stretches = null,
            Gathers = panel.Gathers.IsEmpty ? [] : [.. panel.Gathers.Where(gather => edges.Any(edge => edge.Name == gather.Edge))],
            Marks = panel.Marks.IsEmpty
                ? []
                :
                [
                    .. panel
                        .Marks.Where(mark => mark.IsWithin(from, beyond))
                        .Select(mark => mark.Within(from, to))
                        .Select(mark => mark with { From = mark.From.Moved(left, down), To = mark.To?.Moved(left, down) }),
                ],
            Match = Shows(panel, from, to) ? panel.Match?.Moved(left, down) : null,
            MatchLimit = LimitOf(panel, from, to),
        };
    }

    // What runs round a curve or round corners is matched at one place; its other parts only continue the pattern from there, and one that
    // is its straight front alone runs round nothing.
    private static MatchLimit LimitOf(Panel panel, Length from, Length to)
    {
        if (panel is not { MatchLimit: MatchLimit.Curve or MatchLimit.RunsOn, Stretches: { } stretches })
        {
            return panel.MatchLimit;
        }

        (Length start, Length end, bool isFront) = StripStretch.Longest(stretches);
        Length middle = (start + end).HalfUp();
        return middle < from || middle > to ? MatchLimit.Continues
            : panel.MatchLimit == MatchLimit.RunsOn && isFront && start <= from && to <= end ? MatchLimit.None
            : panel.MatchLimit;
    }

    private static Point LowerLeft(ImmutableArray<Edge> edges)
    {
        Point corner = edges[0].To;
        foreach (Edge edge in edges)
        {
            foreach (Segment segment in edge.Path)
            {
                corner = new Point(Length.Min(corner.X, segment.To.X), Length.Min(corner.Y, segment.To.Y));
            }
        }

        return corner;
    }

    // Every part of a face, and of a boxing those that reach over the front; all of one that is matched and does not, or on which the
    // pattern runs on round a curve or round corners: it is level at every join.
    private static bool Shows(Panel panel, Length from, Length to)
    {
        if (
            panel.MatchLimit is MatchLimit.Curve or MatchLimit.RunsOn
            || panel.Role != FabricRole.Sides
            || panel.Stretches is not { } stretches
            || !stretches.Any(stretch => stretch.IsFront)
        )
        {
            return true;
        }

        Length start = Length.Zero;
        foreach (StripStretch stretch in stretches)
        {
            if (stretch.IsFront && start < to && start + stretch.Length > from)
            {
                return true;
            }

            start += stretch.Length;
        }

        return false;
    }
}
