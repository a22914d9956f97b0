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
    /// <param name="roomOf">How far the piece over a strip's front may reach and be matched; null where nothing asks for that.</param>
    /// <param name="joinsOf">Where a panel that is no strip is joined, from its left edge; empty where it is not.</param>
    /// <param name="isRound">Whether the outline has no corner at which a loop round it is best joined.</param>
    public static Pattern Of(
        Pattern pattern,
        Length seam,
        Func<FabricRole, Length> usableFor,
        JoinPractice practice,
        Func<Panel, FrontRoom?> roomOf,
        Func<Panel, ImmutableArray<Length>> joinsOf,
        bool isRound
    )
    {
        Pattern pieced = pattern;
        ImmutableArray<Length> underFace = [];
        // Faces first, in the pattern's order: a joined front lies under the joins of its face.
        foreach (Panel panel in pattern.Panels)
        {
            Length usable = usableFor(panel.Role);
            bool isLoop = isRound && underFace.IsEmpty && IsLongLoop(pattern, panel, usable, seam);
            ImmutableArray<Length> joins;
            if (isLoop)
            {
                (Length at, joins) = LoopStart.Plan(panel, usable - 2 * seam, roomOf(panel), CoveredSpan.Of(panel, seam));
                pieced = LoopCut.Of(pieced, panel, at);
            }
            else
            {
                joins = panel.Stretches is null ? joinsOf(panel) : StripJoins(panel, usable, seam, underFace, practice, roomOf(panel));
            }

            if (!joins.IsEmpty && JoinedPanel.Of(isLoop ? pieced[panel.Part] : panel, joins, seam) is { } joined)
            {
                pieced = joined.In(pieced);
                underFace = underFace.IsEmpty ? AlongFront(panel, joins) : underFace;
            }
        }

        return ReferenceEquals(pieced, pattern) ? pattern : pieced.Closed();
    }

    // A strip that closes to a loop by itself and does not fit whole.
    private static bool IsLongLoop(Pattern pattern, Panel panel, Length usable, Length seam) =>
        panel.Stretches is not null && usable > 4 * seam && panel.Width + 2 * seam > usable && LoopStart.IsLoop(pattern, panel);

    // Joined only where it does not fit whole, or its front is not matched so, and where the fabric leaves a piece some length beside its
    // allowances.
    private static ImmutableArray<Length> StripJoins(
        Panel strip,
        Length usable,
        Length seam,
        ImmutableArray<Length> underFace,
        JoinPractice practice,
        FrontRoom? room
    )
    {
        // The tip of a mitred strip reaches up to two allowances beyond it.
        Length widest = strip.IsRectangle ? usable : usable - 2 * seam,
            left = strip.IsRectangle ? strip.Allowance(EdgeFacing.Left) : seam,
            right = strip.IsRectangle ? strip.Allowance(EdgeFacing.Right) : seam;
        bool fits = strip.Width + left + right <= widest,
            // No body, and no strip round a curve, is parted for its match: a join there shows.
            isMatched =
                room is null
                || strip.Role != FabricRole.Sides
                || strip.MatchLimit == MatchLimit.Curve
                || room.Holds(Length.Zero, strip.Width);
        // An end may be turned under further than a join: what it takes more is taken for a part of the strip.
        (Length before, Length after) = (Length.Max(left - seam, Length.Zero), Length.Max(right - seam, Length.Zero));
        if ((fits && isMatched) || widest - before - after <= 4 * seam)
        {
            return [];
        }

        ImmutableArray<StripStretch> stretches = strip.Stretches!.Value;
        stretches = stretches.SetItem(0, stretches[0] with { Length = stretches[0].Length + before });
        stretches = stretches.SetItem(stretches.Length - 1, stretches[^1] with { Length = stretches[^1].Length + after });
        ImmutableArray<Length> joins =
        [
            .. StripPiecing
                .Joins(stretches, widest, seam, underFace, practice, room?.Moved(before), IsSection(strip.Part.Kind))
                .Select(join => join - before),
        ];
        return joins.IsEmpty || joins[0] <= Length.Zero || joins[^1] >= strip.Width
            ? []
            : CoveredSpan.Clear(joins, CoveredSpan.Of(strip, seam), strip.Width, widest - 2 * seam - Length.Max(before, after));
    }

    private static bool IsSection(PartKind part) =>
        part is PartKind.ZipperUpper or PartKind.ZipperLower or PartKind.ClosureUpper or PartKind.ClosureLower;

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
