using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns;

namespace CushionService.Engine.Cutting;

/// <summary>Joins a strip that is longer than the fabric is wide from shorter ones.</summary>
/// <remarks>n pieces end to end need at least n = ⌈X / (Fw − 2s)⌉ for a finished length X, and their cut lengths sum to X + 2sn (follows from each
/// piece carrying two allowances). Joins stay off the front and a little away from corners where the fabric allows; a front that
/// would be joined is cut by itself, from corner to corner (common practice, no source).</remarks>
public static class StripPiecing
{
    private static readonly Length CornerClearance = Length.FromInches(2);

    /// <summary>How many pieces a strip takes.</summary>
    /// <param name="finished">Finished length, above zero.</param>
    /// <param name="usable">Usable width of the fabric, more than two allowances.</param>
    /// <param name="seam">Seam allowance at each end of each piece.</param>
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
    public static ImmutableArray<Length> Joins(ImmutableArray<StripStretch> stretches, Length usable, Length seam)
    {
        var finished = stretches.Aggregate(Length.Zero, (sum, stretch) => sum + stretch.Length);
        Length most = usable - 2 * seam;
        int pieces = PiecesFor(finished, usable, seam);
        if (pieces == 1)
        {
            return [];
        }

        // One piece more is better than a join in the front, and a corner is a better place for one than the front is.
        List<(Length, Length)> sides = Sides(stretches, CornerClearance),
            wholeFront = [.. sides, .. FrontCorners(stretches)],
            offCentre = OffCentre(stretches);
        return Within(sides, finished, most, pieces)
            ?? Within(wholeFront, finished, most, pieces)
            ?? Within(sides, finished, most, pieces + 1)
            ?? Within(wholeFront, finished, most, pieces + 1)
            ?? Within(offCentre, finished, most, pieces)
            ?? Within(offCentre, finished, most, pieces + 1)
            ?? Equal(finished, pieces % 2 == 1 ? pieces : pieces + 1);
    }

    // An odd number of pieces keeps the joins off the middle.
    private static ImmutableArray<Length> Equal(Length finished, int pieces) =>
        [.. Enumerable.Range(1, pieces - 1).Select(i => Length.FromNanometres((long)((Int128)finished.Nanometres * i / pieces)))];

    // As near to equal pieces as the allowed zones let them be; null when a piece would be longer than the fabric.
    private static ImmutableArray<Length>? Within(List<(Length From, Length To)> zones, Length finished, Length most, int pieces)
    {
        if (zones.Count == 0)
        {
            return null;
        }

        var joins = ImmutableArray.CreateBuilder<Length>(pieces - 1);
        var before = Length.Zero;
        for (var i = 1; i <= pieces; i++)
        {
            if (i == pieces)
            {
                return finished - before <= most ? joins.ToImmutable() : null;
            }

            // A join may come no later than the fabric reaches, and no earlier than what is left can be covered.
            Length earliest = finished - (pieces - i) * most,
                latest = before + most;
            Length equal = before + Length.FromNanometres((finished - before).Nanometres / (pieces - i + 1));
            Length? best = null;
            foreach ((Length from, Length to) in zones)
            {
                (Length low, Length high) = (Length.Max(from, earliest), Length.Min(to, latest));
                if (low <= high && high > before)
                {
                    Length nearest = Length.Min(Length.Max(equal, low), high);
                    best = best is { } known && Distance(known, equal) <= Distance(nearest, equal) ? known : nearest;
                }
            }

            if (best is not { } join)
            {
                return null;
            }

            joins.Add(join);
            before = join;
        }

        return null;
    }

    private static Length Distance(Length a, Length b) => a > b ? a - b : b - a;

    private static List<(Length From, Length To)> Sides(ImmutableArray<StripStretch> stretches, Length clearance)
    {
        var zones = new List<(Length, Length)>();
        var at = Length.Zero;
        foreach (StripStretch stretch in stretches)
        {
            if (!stretch.IsFront && stretch.Length >= 2 * clearance)
            {
                zones.Add((at + clearance, at + stretch.Length - clearance));
            }

            at += stretch.Length;
        }

        return zones;
    }

    private static IEnumerable<(Length From, Length To)> FrontCorners(ImmutableArray<StripStretch> stretches)
    {
        var at = Length.Zero;
        foreach (StripStretch stretch in stretches)
        {
            Length end = at + stretch.Length;
            if (stretch.IsFront)
            {
                yield return (at, at);
                yield return (end, end);
            }

            at = end;
        }
    }

    // The middle third of a front stays whole.
    private static List<(Length From, Length To)> OffCentre(ImmutableArray<StripStretch> stretches)
    {
        var zones = new List<(Length, Length)>();
        var at = Length.Zero;
        foreach (StripStretch stretch in stretches)
        {
            Length end = at + stretch.Length,
                third = Length.FromNanometres(stretch.Length.Nanometres / 3);
            if (stretch.IsFront)
            {
                zones.Add((at, at + third));
                zones.Add((end - third, end));
            }
            else
            {
                zones.Add((at, end));
            }

            at = end;
        }

        return zones;
    }
}
