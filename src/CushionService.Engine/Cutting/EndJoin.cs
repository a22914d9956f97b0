using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Practices;

namespace CushionService.Engine.Cutting;

/// <summary>The one join of a strip that takes two pieces: outside its front, at a corner or clear of it, and as near to an end of the
/// strip as the fabric lets it (common practice, no source).</summary>
internal static class EndJoin
{
    /// <summary>The join, from the strip's start; null where none does.</summary>
    /// <param name="corners">Where stretches meet, from the start of the strip to its end, both included.</param>
    /// <param name="from">Where the front starts.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="most">The longest finished piece that the fabric gives.</param>
    /// <param name="practice">How near to corners and to each other joins may be.</param>
    /// <param name="room">How far the piece over the front may reach and be matched; null for as far as the fabric does.</param>
    public static Length? Nearest(Length[] corners, Length from, Length to, Length most, JoinPractice practice, FrontRoom? room)
    {
        Length total = corners[^1],
            low = Length.Max(total - most, Patch(most, practice)),
            high = Length.Min(most, total - Patch(most, practice));
        Length? best = null;
        foreach (Length corner in corners)
        {
            Try(corner);
            Try(corner - practice.CornerClearance);
            Try(corner + practice.CornerClearance);
        }

        Try(low);
        Try(high);
        foreach (Length end in room?.Ends(total) ?? [])
        {
            Try(end);
        }

        return best;

        void Try(Length join)
        {
            bool allowed =
                join >= low
                && join <= high
                && (join <= from || join >= to)
                && IsClear(corners, join, practice.CornerClearance)
                && IsMatched([join], from, to, total, room);
            if (allowed && (best is not { } known || ToEnd(join) < ToEnd(known) || (ToEnd(join) == ToEnd(known) && join > known)))
            {
                best = join;
            }
        }

        Length ToEnd(Length join) => Length.Min(join, total - join);
    }

    // At a corner, or far enough from each.
    private static bool IsClear(Length[] corners, Length join, Length clearance)
    {
        var clear = true;
        for (var i = 0; i < corners.Length; i++)
        {
            if (corners[i] == join)
            {
                return true;
            }

            clear &= i == 0 || i == corners.Length - 1 || Apart(join, corners[i]) >= clearance;
        }

        return clear;
    }

    /// <summary>Whether the piece over the front is matched.</summary>
    /// <param name="joins">Joins in order, none of them in the front.</param>
    /// <param name="from">Where the front starts.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="total">Finished length of the strip.</param>
    /// <param name="room">How far that piece may reach; null for as far as the fabric does.</param>
    public static bool IsMatched(ImmutableArray<Length> joins, Length from, Length to, Length total, FrontRoom? room) =>
        room?.Holds(
            joins.Where(join => join <= from).DefaultIfEmpty(Length.Zero).Last(),
            joins.Where(join => join >= to).DefaultIfEmpty(total).First()
        ) != false;

    /// <summary>The shortest piece: on a narrow fabric a quarter of its breadth is enough, or no joins would be found.</summary>
    /// <param name="most">The longest finished piece that the fabric gives.</param>
    /// <param name="practice">How short a piece may be on a wide one.</param>
    public static Length Patch(Length most, JoinPractice practice) =>
        Length.Min(practice.ShortestPatch, Length.FromNanometres(Math.Max(most.Nanometres / 4, 1)));

    private static Length Apart(Length a, Length b) => a > b ? a - b : b - a;
}
