using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Cutting;

/// <summary>A notch between the ends of an edge, at which it is matched to what it is sewn to.</summary>
/// <param name="At">How far along the edge, on its seam line; from zero up to its length.</param>
/// <param name="Kind">A notch or a double one.</param>
/// <param name="Because">What it is for.</param>
internal readonly record struct EdgeNotch(Length At, MarkKind Kind, Message Because)
{
    // A shorter edge is matched by its ends (common practice, no source).
    private static readonly Length ShortestNotched = Length.FromMillimetres(150);

    // Half the way round a disc of 24 in, or 61 cm.
    private static readonly Length LongestHalved = Length.FromMillimetres(958);

    /// <summary>The notches of an edge.</summary>
    /// <param name="edge">An edge that is sewn to another.</param>
    /// <returns>Those of the edge that it is a stretch of, where they lie on it, and those of <see cref="Edge.Joins"/>: what is sewn to a
    /// joined edge is notched as the whole of it is, and so are its stretches.</returns>
    public static IReadOnlyList<EdgeNotch> Of(Edge edge)
    {
        var notches = new List<EdgeNotch>();
        Length whole = edge.Stretch.Whole;
        if (whole >= ShortestNotched)
        {
            // The back's middle has two notches, so that front and back cannot be mistaken for each other.
            bool isBack = edge.Name.First == EdgeWord.Back || edge.MeetsBack;
            Add(Share(edge, 2), MarkTexts.NotchMiddle(edge.Name), isBack ? MarkKind.DoubleNotch : MarkKind.Notch);
        }

        if (whole > LongestHalved)
        {
            Add(Share(edge, 1), MarkTexts.NotchFirstQuarter(edge.Name));
            Add(Share(edge, 3), MarkTexts.NotchLastQuarter(edge.Name));
        }

        foreach (Length join in edge.Joins)
        {
            if (notches.TrueForAll(notch => Apart(notch.At, join) >= JoinNotches.Nearest))
            {
                Add(join, MarkTexts.NotchJoin(edge.Name));
            }
        }

        return notches;

        void Add(Length? at, Message what, MarkKind kind = MarkKind.Notch)
        {
            if (at is { } distance)
            {
                notches.Add(new EdgeNotch(distance, kind, what));
            }
        }
    }

    private static Length Apart(Length one, Length other) => one > other ? one - other : other - one;

    // A number of quarters along the seam line of an edge; null where that is on another stretch of it, or at the join.
    private static Length? Share(Edge edge, int quarters)
    {
        (Length before, Length whole) = edge.Stretch;
        Length at = Length.FromNanometres((long)((Int128)whole.Nanometres * quarters / 4)) - before,
            from = before > Length.Zero ? JoinNotches.Nearest : Length.Zero,
            to = before + edge.Length < whole ? edge.Length - JoinNotches.Nearest : edge.Length;
        return at >= from && at <= to ? at : null;
    }
}
