using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Practices;

namespace CushionService.Engine.Cutting;

/// <summary>Joins a strip that is longer than the fabric allows from shorter ones, where the eye does not look.</summary>
/// <remarks>n pieces end to end need at least n = ⌈X / (Fw − 2s)⌉ for a finished length X, and their cut lengths sum to X + 2sn (follows
/// from each piece carrying two allowances). A strip round a front starts and ends at the closure: one join lies as near to an end as the
/// fabric lets it; more
/// joins lie in pairs on both sides of the front, which stays whole, and beyond them at corners where the fabric reaches those. A front
/// longer than the fabric is joined under the joins of its face, or else in pairs about its middle. A front that is matched is cut on
/// its own, or reaches round its corners only as far as it still finds its motif. The section of a closure is joined at its corners
/// (common practice, no source).</remarks>
public static class StripPiecing
{
    /// <summary>How many pieces a strip takes.</summary>
    /// <param name="finished">Finished length, above zero.</param>
    /// <param name="usable">Usable width of the fabric, more than two allowances.</param>
    /// <param name="seam">Seam allowance at each end of each piece.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fabric is no wider than two allowances.</exception>
    public static int PiecesFor(Length finished, Length usable, Length seam)
    {
        long most = (usable - 2 * seam).Nanometres;
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(most);
        return (int)((finished.Nanometres + most - 1) / most);
    }

    /// <summary>Where to join a strip, as finished distances from its start; empty when it fits in one piece.</summary>
    /// <param name="stretches">The stretches of the strip, end to end.</param>
    /// <param name="usable">Usable width of the fabric, more than two allowances.</param>
    /// <param name="seam">Seam allowance at each end of each piece.</param>
    /// <param name="underFace">Joins of the face above the front, from the front's left end; empty where it is whole.</param>
    /// <param name="practice">How near to corners and to each other joins may be; null for that of inches.</param>
    public static ImmutableArray<Length> Joins(
        ImmutableArray<StripStretch> stretches,
        Length usable,
        Length seam,
        ImmutableArray<Length> underFace = default,
        JoinPractice? practice = null
    ) => Joins(stretches, usable, seam, underFace, practice ?? JoinPractice.Imperial, room: null, isSection: false);

    /// <summary>The same, for a front that is matched or for a closure's section.</summary>
    /// <param name="stretches">The stretches of the strip, end to end.</param>
    /// <param name="usable">Usable width of the fabric, more than two allowances.</param>
    /// <param name="seam">Seam allowance at each end of each piece.</param>
    /// <param name="underFace">Joins of the face above the front, from the front's left end; empty where it is whole.</param>
    /// <param name="usual">How near to corners and to each other joins may be.</param>
    /// <param name="room">How far the piece over the front may reach and be matched; null where that is as far as the fabric does.</param>
    /// <param name="isSection">Whether it is the section of a closure, which is joined at its corners before all.</param>
    internal static ImmutableArray<Length> Joins(
        ImmutableArray<StripStretch> stretches,
        Length usable,
        Length seam,
        ImmutableArray<Length> underFace,
        JoinPractice usual,
        FrontRoom? room,
        bool isSection
    )
    {
        Length[] corners = Corners(stretches);
        Length total = corners[^1],
            most = usable - 2 * seam;
        int pieces = PiecesFor(total, usable, seam);
        if (pieces == 1 && room?.Holds(Length.Zero, total) != false)
        {
            return [];
        }

        int first = stretches.IndexOf(stretches.FirstOrDefault(stretch => stretch.IsFront));
        // No front: the closure's own section, or a loop round a disc.
        if (first < 0)
        {
            return CornerJoins.Of(corners, most, pieces) ?? (pieces == 2 ? [total.HalfUp()] : Equal(total, pieces));
        }

        int last = stretches.LastIndexOf(stretches.Last(stretch => stretch.IsFront));
        (Length from, Length to) = (corners[first], corners[last + 1]);
        if (to - from > most)
        {
            ImmutableArray<Length> seams = Within(underFace, to - from),
                within = Covers(seams, to - from, most) ? seams : Pairs(to - from, most);
            return Outward([.. within.Select(join => from + join)], corners, most, usual);
        }

        if (isSection && CornerJoins.Of(corners, most, pieces) is { } turns && EndJoin.IsMatched(turns, from, to, total, room))
        {
            return turns;
        }

        return pieces <= 2 && EndJoin.Nearest(corners, from, to, most, usual, room) is { } join
            ? [join]
            : Outward(RoundFront(from, to, total, most, usual, room), corners, most, usual);
    }

    /// <summary>Joins symmetric about the middle of a stretch that is longer than the fabric: an odd number of pieces, so that its middle
    /// stays whole.</summary>
    private static ImmutableArray<Length> Pairs(Length front, Length most)
    {
        long pieces = (front.Nanometres + most.Nanometres - 1) / most.Nanometres;
        pieces += pieces % 2 == 0 ? 1 : 0;
        Length narrowest = Length.Min(Length.FromNanometres(most.Nanometres / 6), Length.FromNanometres(front.Nanometres / pieces));
        Length inner = Length.Min(most, Length.FromNanometres((front - 2 * narrowest).Nanometres / (pieces - 2)));
        Length side = (front - (pieces - 2) * inner).HalfUp();
        var joins = ImmutableArray.CreateBuilder<Length>();
        for (var i = 0; i < pieces / 2; i++)
        {
            joins.Add(side + i * inner);
        }

        for (var i = (int)(pieces / 2) - 1; i >= 0; i--)
        {
            joins.Add(front - joins[i]);
        }

        return joins.ToImmutable();
    }

    // Of a face's seams those above the front.
    private static ImmutableArray<Length> Within(ImmutableArray<Length> seams, Length front) =>
        seams.IsDefault ? [] : [.. seams.Where(join => join > Length.Zero && join < front)];

    // A face gives its joins to the front below it, so that they are in line: those of an ell, split at its inside corner, too.
    private static bool Covers(ImmutableArray<Length> joins, Length front, Length most)
    {
        Length before = Length.Zero;
        foreach (Length join in joins)
        {
            if (join - before > most)
            {
                return false;
            }

            before = join;
        }

        return front - before <= most;
    }

    // The piece over the front reaches equally far round both its corners; near to a corner it ends at the corner.
    private static ImmutableArray<Length> RoundFront(
        Length from,
        Length to,
        Length total,
        Length most,
        JoinPractice practice,
        FrontRoom? room
    )
    {
        Length reach = Length.FromNanometres((most - (to - from)).Nanometres / 2),
            patch = EndJoin.Patch(most, practice);
        reach = room is null ? reach : Length.Min(reach, room.Reach(from, to));
        foreach (Length side in new[] { from, total - to })
        {
            reach = side > reach && side - reach < patch ? Length.Max(side - patch, Length.Zero) : reach;
        }

        reach = reach < practice.CornerClearance ? Length.Zero : reach;
        return [.. from > reach ? [from - reach] : Array.Empty<Length>(), .. total - to > reach ? [to + reach] : Array.Empty<Length>()];
    }

    // From the outermost joins to the ends of the strip: at corners where they reach, else in pieces as long as the fabric, the short one
    // at the end.
    private static ImmutableArray<Length> Outward(ImmutableArray<Length> joins, Length[] corners, Length most, JoinPractice practice)
    {
        Length total = corners[^1],
            patch = EndJoin.Patch(most, practice);
        if (joins[0] > most && AtCorners(corners, Length.Zero, joins[0], most) is { } before)
        {
            joins = [.. before, .. joins];
        }

        while (joins[0] > most)
        {
            joins = joins.Insert(0, Length.Max(joins[0] - most, patch));
        }

        if (total - joins[^1] > most && AtCorners(corners, joins[^1], total, most) is { } after)
        {
            joins = [.. joins, .. after];
        }

        while (total - joins[^1] > most)
        {
            joins = joins.Add(Length.Min(joins[^1] + most, total - patch));
        }

        return joins;
    }

    // In as few pieces as the fabric allows; null where corners do not part the stretch so.
    private static ImmutableArray<Length>? AtCorners(Length[] corners, Length from, Length to, Length most)
    {
        Length[] turns = [Length.Zero, .. corners.Where(corner => corner > from && corner < to).Select(corner => corner - from), to - from];
        int pieces = (int)(((to - from).Nanometres + most.Nanometres - 1) / most.Nanometres);
        return CornerJoins.Of(turns, most, pieces) is { } joins ? [.. joins.Select(join => from + join)] : null;
    }

    // A loop with no front and no corners, as round a disc, has no place that hides a join better than another.
    private static ImmutableArray<Length> Equal(Length finished, int pieces) =>
        [.. Enumerable.Range(1, pieces - 1).Select(i => Length.FromNanometres((long)((Int128)finished.Nanometres * i / pieces)))];

    // Where stretches meet, from the start of the strip to its end, both included.
    private static Length[] Corners(ImmutableArray<StripStretch> stretches)
    {
        var corners = new Length[stretches.Length + 1];
        for (var i = 0; i < stretches.Length; i++)
        {
            corners[i + 1] = corners[i] + stretches[i].Length;
        }

        return corners;
    }
}
