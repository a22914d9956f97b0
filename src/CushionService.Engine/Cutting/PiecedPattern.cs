using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Practices;

namespace CushionService.Engine.Cutting;

/// <summary>Replaces the strips of a pattern that are too long for their fabric, and the faces that may be joined, by narrower panels and
/// the seams that join them.</summary>
internal static class PiecedPattern
{
    /// <summary>The pattern with every strip no longer than its fabric allows.</summary>
    /// <param name="pattern">A pattern that closes.</param>
    /// <param name="seam">Seam allowance of the joins.</param>
    /// <param name="usableFor">How long a strip of a role may be cut.</param>
    /// <param name="practice">How near to corners and to each other joins may be.</param>
    /// <param name="roomFor">How much narrower than the fabric a strip of a role is cut, so that its front finds its motif wherever that
    /// is across; zero where nothing is matched across.</param>
    /// <param name="joinsOf">Where a panel that is no strip is joined, from its left edge; empty where it is not.</param>
    public static Pattern Of(
        Pattern pattern,
        Length seam,
        Func<FabricRole, Length> usableFor,
        JoinPractice practice,
        Func<FabricRole, Length> roomFor,
        Func<Panel, ImmutableArray<Length>> joinsOf
    )
    {
        Pattern pieced = pattern;
        ImmutableArray<Length> underFace = [];
        // Faces first, in the pattern's order: a joined front lies under the joins of its face.
        foreach (Panel panel in pattern.Panels)
        {
            Length usable = usableFor(panel.Role);
            // The tip of a mitred strip reaches up to two allowances beyond it.
            Length tips = panel.IsRectangle ? Length.Zero : 2 * seam;
            ImmutableArray<Length> joins =
                panel.Stretches is not { } stretches ? joinsOf(panel)
                // Joined only where it does not fit whole, and where the fabric leaves a piece some length beside its
                // allowances.
                : usable - tips > 4 * seam && panel.Width + 2 * seam > usable - tips
                    ? CoveredSpan.Clear(
                        StripPiecing.Joins(stretches, Matching(panel, usable - tips, roomFor(panel.Role), seam), seam, underFace, practice),
                        CoveredSpan.Of(panel, seam),
                        panel.Width,
                        usable - tips - 2 * seam
                    )
                : [];
            if (!joins.IsEmpty && JoinedPanel.Of(panel, joins, seam) is { } joined)
            {
                pieced = joined.In(pieced);
                underFace = underFace.IsEmpty ? AlongFront(panel, joins) : underFace;
            }
        }

        return ReferenceEquals(pieced, pattern) ? pattern : pieced.Closed();
    }

    // A matched front that leaves a repeat's width beside it can be laid wherever the motif is; one that is too long for that is cut as
    // long as the fabric allows.
    private static Length Matching(Panel strip, Length usable, Length room, Length seam)
    {
        Length front = strip.Stretches!.Value.Where(stretch => stretch.IsFront).Aggregate(Length.Zero, (sum, one) => sum + one.Length);
        return strip.Match is not null && front > Length.Zero && front + 2 * seam <= usable - room ? usable - room : usable;
    }

    // A face's joins from the left end of its front; nothing where it has no straight front.
    private static ImmutableArray<Length> AlongFront(Panel face, ImmutableArray<Length> joins)
    {
        foreach (Edge edge in face.Edges)
        {
            if (face.Stretches is null && edge.Name == EdgeName.Front && edge.Facing == EdgeFacing.Down)
            {
                return [.. joins.Select(join => join - edge.From.X)];
            }
        }

        return [];
    }
}
