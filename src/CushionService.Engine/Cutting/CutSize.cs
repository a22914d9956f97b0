using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Cutting;

/// <summary>One cut size of a panel, with the terms that make it: finished size, take-up, and the allowance at either edge.</summary>
/// <param name="Finished">Finished size, all layers together.</param>
/// <param name="Layers">Layers that the finished size is folded from, at least 1.</param>
/// <param name="TakeUp">What stitching draws in.</param>
/// <param name="First">The finish of the left or the lower edge: the deepest that faces that way.</param>
/// <param name="Second">The finish of the right or the upper edge.</param>
/// <param name="Cut">The size that is cut.</param>
public readonly record struct CutSize(Length Finished, int Layers, Length TakeUp, EdgeFinish First, EdgeFinish Second, Length Cut)
{
    // Cut outlines have their corners on whole micrometres, rounded outward.
    private static readonly Length Rounding = Length.FromNanometres(2_000);

    /// <summary>Whether it is cut along a line of its own, and not to a size.</summary>
    public bool IsTemplate { get; private init; }

    /// <summary>The sum of the terms, before rounding.</summary>
    public Length Exact => Finished + TakeUp + First.Allowance + Second.Allowance;

    /// <summary>The size across the fabric, not yet rounded.</summary>
    /// <param name="panel">The panel; edges that slant have no part in it, since a template is not cut to a size.</param>
    public static CutSize Across(Panel panel) =>
        Of(panel.Width, panel.Layers, panel.TakeUpAcross, Finish(panel, EdgeFacing.Left), Finish(panel, EdgeFacing.Right));

    /// <summary>The size along the fabric, not yet rounded.</summary>
    /// <param name="panel">The panel.</param>
    public static CutSize Along(Panel panel) =>
        Of(panel.Height, panel.LayersAlong, panel.TakeUpAlong, Finish(panel, EdgeFacing.Down), Finish(panel, EdgeFacing.Up));

    /// <summary>The same, cut on a multiple of a step: up, or to the nearest.</summary>
    /// <param name="step">The cutting step, above zero.</param>
    /// <param name="rounding">Up, or to the nearest; halves go down.</param>
    /// <returns>Halves go down because half a step is taken off before rounding up.</returns>
    public CutSize Rounded(Length step, FaceRounding rounding) =>
        this with
        {
            Cut =
                rounding == FaceRounding.Up ? Exact.RoundUpTo(step) : (Exact - Length.FromNanometres(step.Nanometres / 2)).RoundUpTo(step),
        };

    /// <summary>What the terms leave unsaid of the cut size: at a slanted edge a corner reaches further than the allowance.</summary>
    /// <returns>Below zero where it was rounded down; zero where the two agree to the micrometres that outlines are drawn on.</returns>
    public Length Rest
    {
        get
        {
            Length rest = Cut - Exact;
            return IsTemplate && rest <= Rounding && rest >= Length.Zero - Rounding ? Length.Zero : rest;
        }
    }

    /// <summary>The same, cut along the panel's own line.</summary>
    /// <param name="panel">The panel, which is no rectangle.</param>
    /// <param name="before">How far the cut outline reaches beyond the left or the lower end of the panel.</param>
    /// <param name="beyond">How far it reaches beyond the right or the upper end.</param>
    public CutSize AsTemplate(Panel panel, Length before, Length beyond) =>
        this with
        {
            First = Reaching(panel, before, First),
            Second = Reaching(panel, beyond, Second),
            Cut = Finished + before + beyond,
            IsTemplate = true,
        };

    // The finish that reaches so far: that of the edge that faces the way, or, where a curved or slanted edge lies there, the deepest of
    // the panel that does not reach further.
    private static EdgeFinish Reaching(Panel panel, Length reach, EdgeFinish faced)
    {
        EdgeFinish found = faced.Allowance <= reach + Rounding ? faced : default;
        foreach (Edge edge in panel.Edges)
        {
            if (edge.Finish.Allowance <= reach + Rounding && edge.Finish.Allowance > found.Allowance)
            {
                found = edge.Finish;
            }
        }

        return found;
    }

    private static CutSize Of(Length finished, int layers, Length takeUp, EdgeFinish first, EdgeFinish second)
    {
        var size = new CutSize(finished, layers, takeUp, first, second, default);
        return size with { Cut = size.Exact };
    }

    // Edges that face one way may differ in finish, as beside a closure; the deepest decides how far the piece reaches.
    private static EdgeFinish Finish(Panel panel, EdgeFacing facing)
    {
        EdgeFinish deepest = default;
        foreach (Edge edge in panel.Edges)
        {
            if (edge.Facing == facing && (edge.Finish.Allowance > deepest.Allowance || deepest == default))
            {
                deepest = edge.Finish;
            }
        }

        return deepest;
    }
}
