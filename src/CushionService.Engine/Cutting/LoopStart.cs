using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;

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
        (Length from, Length to) = StripStretch.Front(strip.Stretches!.Value)!.Value;
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

    private static Length Share(Length total, int part, int of) => Length.FromNanometres((long)((Int128)total.Nanometres * part / of));

    private static Length Turn(Length at, Length total) =>
        Length.FromNanometres(((at.Nanometres % total.Nanometres) + total.Nanometres) % total.Nanometres);
}
