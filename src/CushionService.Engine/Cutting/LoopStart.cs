using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Patterns.Sections;

namespace CushionService.Engine.Cutting;

/// <summary>A strip that closes to a loop by itself, and where it is cut open.</summary>
/// <remarks>A loop without corners and without a closure asks for no join anywhere: n = ⌈P / (Fw − 2s)⌉ pieces, one of them in the middle
/// of the front and the others equal, look the same from both sides and leave no patch. The one over the front is longer than the others
/// where a straight front would not fit it whole, and one piece more is cut where the front would lose its match (common practice, no
/// source).</remarks>
internal static class LoopStart
{
    // In nanometres: less than the micrometre to which corners are rounded.
    private const long Sliver = 1000;

    /// <summary>Whether a strip is closed by a seam of its own ends, and has no gathers or folds.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="strip">A panel of it.</param>
    public static bool IsLoop(Pattern pattern, Panel strip) =>
        strip is { IsRectangle: true, Layers: 1, LayersAlong: 1, Stretches: { } stretches }
        && strip.Gathers.IsEmpty
        && stretches.Any(stretch => stretch.IsFront)
        && pattern.Seams.Any(seam =>
            seam is { Kind: SeamKind.StripJoin, One: [var end], Other: [var start] }
            && end == new EdgeRef(strip.Part, EdgeName.End)
            && start == new EdgeRef(strip.Part, EdgeName.Start)
        );

    /// <summary>Where a loop is cut open, from the strip's start, and where it is joined from there.</summary>
    /// <param name="strip">The strip, which is longer than the fabric takes.</param>
    /// <param name="most">The longest finished piece that the fabric gives, above zero.</param>
    /// <param name="room">How far the piece over the front may reach and be matched; null for as far as the fabric does.</param>
    /// <param name="covered">Spans that no join may lie in: all joins then move on together, as little as they can.</param>
    public static (Length At, ImmutableArray<Length> Joins) Plan(
        Panel strip,
        Length most,
        FrontRoom? room,
        ImmutableArray<CoveredSpan> covered
    )
    {
        Length total = strip.Width;
        (Length from, Length to) = Front(strip);
        Length front = to - from;
        int pieces = Pieces(total, most);
        // A straight front is not joined where it fits whole; half the way round a disc is no longer than a share, or does not fit.
        Length over = Length.Max(Share(total, 1, pieces), front <= most ? front : Length.Zero),
            beyond = (over - front).HalfUp();
        if (front <= most && strip.MatchLimit != MatchLimit.Curve && room?.Holds(from - beyond, to + beyond) == false)
        {
            over = Length.Min(front + 2 * room.Reach(from, to), most);
            pieces = 1 + Pieces(total - over, most);
        }

        Length open = (from + to + over).HalfUp();
        ImmutableArray<Length> joins = [.. Enumerable.Range(1, pieces - 1).Select(i => Share(total - over, i, pieces - 1))];
        Length[] all = [open, .. joins.Select(join => open + join)];
        Length move = covered
            .SelectMany(span => all.SelectMany(join => new[] { span.From - join, span.To - join }))
            .Select(move => Turn(move + total.HalfUp(), total) - total.HalfUp())
            .OrderBy(move => Math.Abs(move.Nanometres))
            .Prepend(Length.Zero)
            .FirstOrDefault(move => !all.Any(join => IsCovered(Turn(join + move, total), covered, total)));
        return (OnCorner(strip, Turn(open + move, total)), joins);
    }

    /// <summary>The pattern with the strip cut open elsewhere.</summary>
    /// <param name="pattern">A pattern in which the strip <see cref="IsLoop"/>.</param>
    /// <param name="strip">The strip.</param>
    /// <param name="at">Where, from its start; less than its length.</param>
    public static Pattern CutOpen(Pattern pattern, Panel strip, Length at)
    {
        if (at == Length.Zero)
        {
            return pattern;
        }

        (Length from, Length to) = Front(strip);
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

        Panel turned = strip with
        {
            Edges = outline.South(EdgeName.Start, ends.Length, ends.Finish).Edges(),
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

    // From the start of its first stretch to the end of its last one.
    private static (Length From, Length To) Front(Panel strip)
    {
        (Length from, Length to, Length at) = (Length.Zero, Length.Zero, Length.Zero);
        foreach (StripStretch stretch in strip.Stretches!.Value)
        {
            from = stretch.IsFront && to == Length.Zero ? at : from;
            at += stretch.Length;
            to = stretch.IsFront ? at : to;
        }

        return (from, to);
    }

    private static int Pieces(Length length, Length most) => (int)((length.Nanometres + most.Nanometres - 1) / most.Nanometres);

    // Rounding leaves no sliver beside the end of a stretch.
    private static Length OnCorner(Panel strip, Length at)
    {
        Length corner = Length.Zero;
        foreach (StripStretch stretch in strip.Stretches!.Value)
        {
            if (Math.Abs((at - corner).Nanometres) <= Sliver)
            {
                return corner;
            }

            corner += stretch.Length;
        }

        return Math.Abs((at - corner).Nanometres) <= Sliver ? Length.Zero : at;
    }

    private static bool IsCovered(Length join, ImmutableArray<CoveredSpan> covered, Length total) =>
        covered.Any(span => span.Holds(join) || span.Holds(join - total) || span.Holds(join + total));

    private static Length Low(Edge edge) => Length.Min(edge.From.X, edge.To.X);

    private static Length Share(Length total, int part, int of) => Length.FromNanometres((long)((Int128)total.Nanometres * part / of));

    private static Length Turn(Length at, Length total) =>
        Length.FromNanometres(((at.Nanometres % total.Nanometres) + total.Nanometres) % total.Nanometres);
}
