using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Practices;

namespace CushionService.Engine.Cutting;

/// <summary>Where a face that is wider than its fabric is joined: a whole breadth in the middle and a panel at each side, so that no join
/// meets the front's centre.</summary>
/// <remarks>Common practice, no source. An ell, a tee or a U is split at its inside corners where that makes panels that fit. Else a side
/// panel is not made narrower than a sixth of the breadth where the face leaves it more; where a join would meet a corner, or a panel not
/// fit the fabric, the middle is made narrower.</remarks>
public static class FaceJoining
{
    // A bound for widths that no cushion has.
    private const int MostBreadths = 25;

    /// <summary>The joins, from the left edge.</summary>
    /// <param name="face">A face of any outline, wider than the fabric takes.</param>
    /// <param name="usable">How wide a panel may be cut.</param>
    /// <param name="seam">Seam allowance of the joins.</param>
    /// <param name="fits">Whether a panel fits the fabric with its allowances.</param>
    /// <param name="practice">In which steps the middle is made narrower; null for those of inches.</param>
    /// <returns>None where the fabric has no breadth beside its allowances, or no joins make panels that fit.</returns>
    public static ImmutableArray<Length> Joins(
        Panel face,
        Length usable,
        Length seam,
        Func<Panel, bool> fits,
        JoinPractice? practice = null
    )
    {
        Length most = usable - 2 * seam,
            width = face.Width;
        if (most <= 2 * seam)
        {
            return [];
        }

        ImmutableArray<Length> inside = InsideCorners(face);
        if (!inside.IsEmpty && JoinedPanel.Of(face, inside, seam) is { } split && split.Parts.All(fits))
        {
            return inside;
        }

        Length step = (practice ?? JoinPractice.Imperial).FaceStep;
        // An odd number of panels keeps the centre whole.
        for (long breadths = Odd(width, most); breadths <= MostBreadths; breadths += 2)
        {
            // A sixth of a breadth, but never more than an equal share: a face that is little wider than the fabric has
            // three like panels.
            Length narrowest = Length.Min(Length.FromNanometres(most.Nanometres / 6), Length.FromNanometres(width.Nanometres / breadths));
            Length widest = Length.Min(most, Length.FromNanometres((width - 2 * narrowest).Nanometres / (breadths - 2)));
            for (
                Length inner = widest;
                (breadths - 2) * inner + 2 * most >= width && inner > Length.FromNanometres(most.Nanometres / 4);
                inner -= step
            )
            {
                Length side = Length.FromNanometres((width - (breadths - 2) * inner).Nanometres / 2),
                    each = inner;
                ImmutableArray<Length> joins = [.. Enumerable.Range(0, (int)breadths - 1).Select(i => side + i * each)];
                if (
                    !joins.Any(join => MeetsCorner(face, join, seam))
                    && JoinedPanel.Of(face, joins, seam) is { } joined
                    && joined.Parts.All(fits)
                )
                {
                    return joins;
                }
            }
        }

        return [];
    }

    // Where an ell, a tee or a U turns inward between straight edges: a join from there runs on in line with an edge.
    private static ImmutableArray<Length> InsideCorners(Panel face)
    {
        var corners = new SortedSet<Length>(Comparer<Length>.Create((one, other) => one.CompareTo(other)));
        for (var i = 0; i < face.Edges.Length; i++)
        {
            Edge edge = face.Edges[i],
                next = face.Edges[(i + 1) % face.Edges.Length];
            bool inward =
                (edge.Facing, next.Facing)
                is
                    (EdgeFacing.Up, EdgeFacing.Right)
                    or
                    (EdgeFacing.Right, EdgeFacing.Down)
                    or
                    (EdgeFacing.Down, EdgeFacing.Left)
                    or
                    (EdgeFacing.Left, EdgeFacing.Up);
            if (inward)
            {
                corners.Add(edge.To.X);
            }
        }

        return [.. corners];
    }

    // At least three panels, and an odd number of them.
    private static long Odd(Length width, Length most)
    {
        long breadths = (width.Nanometres + most.Nanometres - 1) / most.Nanometres;
        return Math.Max(3, breadths + (breadths % 2 == 0 ? 1 : 0));
    }

    // Within an allowance of a corner the join's own allowance would not lie flat; nor is a gathered edge joined.
    private static bool MeetsCorner(Panel face, Length join, Length clearance)
    {
        foreach (Edge edge in face.Edges)
        {
            Length low = Length.Min(edge.From.X, edge.To.X),
                high = Length.Max(edge.From.X, edge.To.X);
            bool near =
                Within(edge.From.X, join, clearance)
                || (join > low - clearance && join < high + clearance && face.Gathers.Any(gather => gather.Edge == edge.Name));
            if (near)
            {
                return true;
            }
        }

        return false;
    }

    private static bool Within(Length x, Length join, Length clearance) => x > join - clearance && x < join + clearance;
}
