using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Cutting;

/// <summary>How far a cut line reaches where arcs reach furthest: a curve is level or plumb there, so its allowance lies straight beyond
/// it.</summary>
/// <param name="Left">The cut line's leftmost place; null where no arc ends at the panel's left.</param>
/// <param name="Right">The rightmost place.</param>
/// <param name="Low">The lowest place.</param>
/// <param name="High">The highest place.</param>
/// <remarks>Tangents that stand for the arcs of an ellipse lean out by less than a tenth of a millimetre where they meet: without this an
/// oval as wide as its fabric, allowances and all, would not fit it. Mitres of corners reach further, and stay.</remarks>
internal readonly record struct ArcReach(Length? Left, Length? Right, Length? Low, Length? High)
{
    private static readonly Length Micrometre = Length.FromNanometres((long)OutlineOffset.Micrometre);
    private static readonly Length Lean = Length.FromMillimetres(0.1m);

    /// <summary>The reach of a panel's cut line; null where it has no arcs.</summary>
    /// <param name="panel">A panel from (0, 0) upwards and to the right.</param>
    public static ArcReach? Of(Panel panel)
    {
        ArcReach? reach = null;
        foreach (Edge edge in panel.Edges)
        {
            foreach (Segment arc in edge.Path)
            {
                if (!arc.IsStraight)
                {
                    reach = (reach ?? default).With(arc.From, panel, edge.Finish.Allowance).With(arc.To, panel, edge.Finish.Allowance);
                }
            }
        }

        return reach;
    }

    /// <summary>A corner of the cut line, drawn in to the reach where it lies beyond it by as little as that.</summary>
    /// <param name="corner">In the panel's coordinates.</param>
    public Point Within(Point corner) =>
        new(-Most(-Most(corner.X, Right), Left is { } left ? -left : null), -Most(-Most(corner.Y, High), Low is { } low ? -low : null));

    // On whole micrometres, as all corners of a cut line are.
    private ArcReach With(Point at, Panel panel, Length allowance) =>
        new(
            at.X == Length.Zero ? -allowance.RoundUpTo(Micrometre) : Left,
            at.X == panel.Width ? (at.X + allowance).RoundUpTo(Micrometre) : Right,
            at.Y == Length.Zero ? -allowance.RoundUpTo(Micrometre) : Low,
            at.Y == panel.Height ? (at.Y + allowance).RoundUpTo(Micrometre) : High
        );

    private static Length Most(Length at, Length? limit) => limit is { } most && at > most && at - most <= Lean ? most : at;
}
