using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Layouts;

/// <summary>Sets where the motif lies on every panel of a cushion that shows the pattern, and says where it cannot be carried on.</summary>
/// <remarks>Faces have a motif in their middle, and so does the body of a bolster. The sheet of a waterfall has it in the middle of its
/// top, and the front runs on from there (common practice, no source).</remarks>
public static class PatternMatching
{
    /// <summary>The pattern with the matching point of each panel.</summary>
    /// <param name="pattern">The pattern before its strips are joined.</param>
    /// <param name="cushion">The cushion.</param>
    /// <param name="fabricOf">The fabric of a role.</param>
    /// <param name="shift">How far the motif is from the middle of the cushion, where a print runs on along a row.</param>
    public static Pattern On(
        Pattern pattern,
        CushionSpecification cushion,
        Func<FabricRole, FabricSpecification> fabricOf,
        Point shift = default
    )
    {
        ArgumentNullException.ThrowIfNull(pattern);
        FabricSpecification top = fabricOf(FabricRole.Top),
            sides = fabricOf(FabricRole.Sides);
        if (top.Repeat is null && sides.Repeat is null && fabricOf(FabricRole.Bottom).Repeat is null)
        {
            return pattern;
        }

        BoxingPhase boxing = new(pattern, cushion, sides, carries: top.Id == sides.Id, shift);
        return pattern with { Panels = [.. pattern.Panels.Select(panel => Matched(panel, cushion, boxing, shift))] };
    }

    private static Panel Matched(Panel panel, CushionSpecification cushion, BoxingPhase boxing, Point shift)
    {
        MatchSpecification match = cushion.Match;
        if (panel.IsAddition || panel.Part.IsInner)
        {
            return panel;
        }

        return panel.Part.Kind switch
        {
            _ when match.Faces == FaceMatch.Free => panel with { Match = null },
            PartKind.Bottom => match.Underside == UndersideMatch.Free ? panel with { Match = null } : Shifted(panel, shift),
            PartKind.Top when cushion.Construction is Construction.Mitred or Construction.GatheredCorner => Shifted(panel, shift) with
            {
                MatchLimit = match.Boxing == BoxingMatch.Free ? MatchLimit.None : MatchLimit.Corners,
            },
            PartKind.Top => Shifted(panel, shift),
            PartKind.Gore or PartKind.End => panel,
            PartKind.Body => panel with { Match = MiddleOf(panel) },
            PartKind.Main => panel with
            {
                Match = MiddleOfTop(panel).Moved(shift.X, shift.Y),
                MatchLimit = match.Underside == UndersideMatch.Free ? MatchLimit.None : MatchLimit.Underside,
            },
            _ when match.Boxing == BoxingMatch.Free => panel with { Match = null },
            _ => boxing.On(panel),
        };
    }

    private static Panel Shifted(Panel panel, Point shift) => panel with { Match = panel.Match?.Moved(shift.X, shift.Y) };

    // Half-way round what is seen: what laps over lies beneath.
    private static Point MiddleOf(Panel body)
    {
        Length lap = body.Stretches is [.., var last] && !last.IsFront ? last.Length : Length.Zero;
        return new Point((body.Width - lap).HalfUp(), body.Height.HalfUp());
    }

    private static Point MiddleOfTop(Panel main)
    {
        Length depth = main[EdgeName.Right.With(EdgeWord.Top)].Length;
        return new Point(main.Width.HalfUp(), main.Height - depth.HalfUp());
    }
}
