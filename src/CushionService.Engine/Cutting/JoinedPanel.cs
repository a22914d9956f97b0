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

    // Which edges of the parts make up each edge of the whole, in the direction of the outline.
    private readonly Dictionary<EdgeName, ImmutableArray<EdgeRef>> _edges;

    private JoinedPanel(Panel whole, ImmutableArray<Panel> parts, Dictionary<EdgeName, ImmutableArray<EdgeRef>> edges) =>
        (_whole, Parts, _edges) = (whole, parts, edges);

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
        var parts = ImmutableArray.CreateBuilder<Panel>();
        var edges = panel.Edges.ToDictionary(edge => edge.Name, edge => ImmutableArray.Create(new EdgeRef(default, edge.Name)));
        // Cut from left to right: what is right of a join is parted again at the next, and its stretches have no part's
        // name until then.
        (ImmutableArray<Edge> rest, Length from) = (panel.Edges, Length.Zero);
        foreach (Length at in joins)
        {
            if (Parting.Plumb(rest, at, (EdgeName.End, join), (EdgeName.Start, join)) is not { } parting)
            {
                return null;
            }

            PartName name = panel.Part with { Stretch = parts.Count + 1 };
            foreach ((EdgeName edge, ImmutableArray<EdgeRef> stretches) in edges)
            {
                edges[edge] =
                [
                    .. stretches.SelectMany(stretch =>
                        stretch.Part != default
                            ? [stretch]
                            : parting
                                .Stretches.Where(parted => parted.Of == stretch.Edge)
                                .Select(parted => new EdgeRef(parted.IsAfter ? default : name, parted.Name))
                    ),
                ];
            }

            parts.Add(Part(panel, name, parting.Before, from, parting.At));
            (rest, from) = (parting.After, parting.At);
        }

        PartName last = panel.Part with { Stretch = parts.Count + 1 };
        parts.Add(Part(panel, last, rest, from, panel.Width));
        return new JoinedPanel(
            panel,
            parts.ToImmutable(),
            edges.ToDictionary(
                edge => edge.Key,
                edge =>
                    ImmutableArray.CreateRange(
                        edge.Value.Select(stretch => stretch.Part != default ? stretch : stretch with { Part = last })
                    )
            )
        );
    }

    /// <summary>The pattern with the parts and their joins in the panel's place.</summary>
    /// <param name="pattern">A pattern that has the whole panel.</param>
    /// <returns>A pattern not yet checked: several panels may be replaced before it closes again.</returns>
    /// <remarks>Seams of the whole panel name the edges of its parts instead.</remarks>
    public Pattern In(Pattern pattern)
    {
        bool Names(ImmutableArray<EdgeRef> refs)
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

        // Most seams are not of this panel, and stay as they are.
        ImmutableArray<EdgeRef> Now(ImmutableArray<EdgeRef> refs) =>
            Names(refs) ? [.. refs.SelectMany(edge => edge.Part == _whole.Part ? _edges[edge.Edge] : [edge])] : refs;
        IEnumerable<Seam> joins = Parts.Zip(
            Parts.Skip(1),
            (left, right) => new Seam(SeamKind.StripJoin, new EdgeRef(left.Part, EdgeName.End), new EdgeRef(right.Part, EdgeName.Start))
        );
        return new Pattern(
            [.. pattern.Panels.SelectMany(panel => panel.Part == _whole.Part ? Parts : [panel])],
            [
                .. joins,
                .. pattern.Seams.Select(joined =>
                    Names(joined.One) || Names(joined.Other) ? joined with { One = Now(joined.One), Other = Now(joined.Other) } : joined
                ),
            ]
        );
    }

    // From its own lower left corner.
    private static Panel Part(Panel panel, PartName name, ImmutableArray<Edge> edges, Length from, Length to)
    {
        Point[] ends = [.. edges.SelectMany(edge => edge.Path.Select(segment => segment.To))];
        Length left = -ends.Min(end => end.X),
            down = -ends.Min(end => end.Y);
        // A mark on a join belongs to the part at its right; one on the right edge of all to the last part.
        bool Holds(Point point) => point.X >= from && (point.X < to || (to == panel.Width && point.X == to));
        return panel with
        {
            Part = name,
            Edges = [.. edges.Select(edge => edge.Moved(left, down))],
            Stretches = null,
            Gathers = [.. panel.Gathers.Where(gather => edges.Any(edge => edge.Name == gather.Edge))],
            Marks =
            [
                .. panel
                    .Marks.Where(mark => IsLevel(mark) ? Reaches(mark, from, to) : Holds(mark.From))
                    .Select(mark => Clipped(mark, from, to))
                    .Select(mark => mark with { From = mark.From.Moved(left, down), To = mark.To?.Moved(left, down) }),
            ],
            Match = Shows(panel, from, to) ? panel.Match?.Moved(left, down) : null,
        };
    }

    // Every part of a face, and of a boxing those that reach over the front; all of one that is matched and does not.
    private static bool Shows(Panel panel, Length from, Length to)
    {
        if (panel.Role != FabricRole.Sides || panel.Stretches is not { } stretches || !stretches.Any(stretch => stretch.IsFront))
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

    // A level line goes on from part to part.
    private static bool IsLevel(PanelMark mark) => mark.To is { } to && to.Y == mark.From.Y;

    private static bool Reaches(PanelMark mark, Length from, Length to) =>
        Length.Max(mark.From.X, mark.To!.Value.X) > from && Length.Min(mark.From.X, mark.To.Value.X) < to;

    // A level line that passes a join ends at the join on either part.
    private static PanelMark Clipped(PanelMark mark, Length from, Length to)
    {
        Point Within(Point point) => point with { X = Length.Min(Length.Max(point.X, from), to) };
        return IsLevel(mark) ? mark with { From = Within(mark.From), To = Within(mark.To!.Value) } : mark;
    }
}
