using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Patterns.Sections;

namespace CushionService.Engine.Cutting;

/// <summary>Cuts a loop open at another place than the one at which it was drawn.</summary>
internal static class LoopCut
{
    /// <summary>The pattern with the strip cut open elsewhere.</summary>
    /// <param name="pattern">A pattern in which the strip <see cref="LoopStart.IsLoop"/>.</param>
    /// <param name="strip">The strip.</param>
    /// <param name="at">Where, from its start; less than its length.</param>
    public static Pattern Of(Pattern pattern, Panel strip, Length at)
    {
        if (at == Length.Zero)
        {
            return pattern;
        }

        (Length from, Length to) = StripStretch.Front(strip.Stretches!.Value)!.Value;
        Length total = strip.Width,
            middle = from + to;
        var outline = new PanelOutline(edges: strip.Edges.Length + 2);
        // What was left of the place follows what was right of it.
        foreach ((Edge edge, bool isAfter) in Turned(strip, EdgeFacing.Down, at))
        {
            outline.East(Name(edge, isAfter), LengthOf(edge, isAfter), edge.Finish);
        }

        Edge ends = strip[EdgeName.End];
        outline.North(EdgeName.End, ends.Length, ends.Finish);
        foreach ((Edge edge, bool isAfter) in Turned(strip, EdgeFacing.Up, at).Reverse())
        {
            outline.West(Name(edge, isAfter), LengthOf(edge, isAfter), edge.Finish);
        }

        ImmutableArray<Edge> drawn = outline.South(EdgeName.Start, ends.Length, ends.Finish).Edges();
        Panel turned = strip with
        {
            Edges = [.. drawn.Select(edge => strip.Edges.FirstOrDefault(IsStretchOf(edge)) is { } of ? Placed(edge, of) : edge)],
            Stretches = Turned(strip.Stretches!.Value, at),
            CutOpenAt = at,
            // The front comes to lie in one stretch, and the point with it.
            Match = strip.Match?.Moved((middle.HalfUp() < at ? total : Length.Zero) - at, Length.Zero),
            Marks = [.. strip.Marks.SelectMany(mark => Turned(mark, at, total))],
        };
        return pattern with
        {
            Panels = pattern.Panels.Replace(strip, turned),
            Seams = [.. pattern.Seams.Select(seam => seam with { One = Now(seam.One), Other = Now(seam.Other) })],
        };

        bool IsCut(Edge edge) => Low(edge) < at && at < Low(edge) + edge.Length;
        EdgeName Name(Edge edge, bool isAfter) => isAfter && IsCut(edge) ? edge.Name.With(Parting.Again) : edge.Name;
        Length LengthOf(Edge edge, bool isAfter) =>
            !IsCut(edge) ? edge.Length
            : isAfter ? Low(edge) + edge.Length - at
            : at - Low(edge);
        Func<Edge, bool> IsStretchOf(Edge edge) => of => IsCut(of) && (edge.Name == of.Name || edge.Name == Name(of, isAfter: true));
        // As the edge runs: to the right below, to the left above.
        Edge Placed(Edge edge, Edge of)
        {
            bool isFirst = (edge.Name == of.Name) == (of.Facing == EdgeFacing.Down);
            return edge with { Stretch = of.StretchAt(isFirst ? Length.Zero : of.Length - edge.Length) };
        }
        ImmutableArray<EdgeRef> Now(ImmutableArray<EdgeRef> refs) =>
            refs.Any(edge => edge.Part == strip.Part)
                ? [.. refs.SelectMany(edge => edge.Part == strip.Part && IsCut(strip[edge.Edge]) ? Both(edge) : [edge])]
                : refs;
        // In the order of the outline, as the edge ran.
        EdgeRef[] Both(EdgeRef edge)
        {
            EdgeRef again = edge with { Edge = edge.Edge.With(Parting.Again) };
            return strip[edge.Edge].Facing == EdgeFacing.Up ? [again, edge] : [edge, again];
        }
    }

    // Edges that face one way, from left to right as they come to lie; one that is cut is there twice.
    private static IEnumerable<(Edge Edge, bool IsAfter)> Turned(Panel strip, EdgeFacing facing, Length at)
    {
        Edge[] edges = [.. strip.Edges.Where(edge => edge.Facing == facing).OrderBy(Low)];
        return
        [
            .. edges.Where(edge => Low(edge) + edge.Length > at).Select(edge => (edge, true)),
            .. edges.Where(edge => Low(edge) < at).Select(edge => (edge, false)),
        ];
    }

    private static ImmutableArray<StripStretch> Turned(ImmutableArray<StripStretch> stretches, Length at)
    {
        List<StripStretch> before = [],
            after = [];
        Length from = Length.Zero;
        foreach (StripStretch stretch in stretches)
        {
            Length left = Length.Max(Length.Zero, Length.Min(stretch.Length, at - from));
            from += stretch.Length;
            if (left > Length.Zero)
            {
                before.Add(stretch with { Length = left });
            }

            if (stretch.Length > left)
            {
                after.Add(stretch with { Length = stretch.Length - left });
            }
        }

        return [.. after, .. before];
    }

    // A line all along stays; another that the place parts is two.
    private static IEnumerable<PanelMark> Turned(PanelMark mark, Length at, Length total)
    {
        bool isAlong =
            mark is { IsLevel: true, To: { } to } && Length.Min(mark.From.X, to.X) <= Length.Zero && Length.Max(mark.From.X, to.X) >= total;
        if (isAlong)
        {
            return [mark];
        }

        return new[] { (From: at, To: total + Length.FromNanometres(1), By: -at), (From: Length.Zero, To: at, By: total - at) }
            .Where(part => mark.IsWithin(part.From, part.To))
            .Select(part => (Mark: mark.Within(part.From, Length.Min(part.To, total)), part.By))
            .Select(part =>
                part.Mark with
                {
                    From = part.Mark.From.Moved(part.By, Length.Zero),
                    To = part.Mark.To?.Moved(part.By, Length.Zero),
                }
            );
    }

    private static Length Low(Edge edge) => Length.Min(edge.From.X, edge.To.X);
}
