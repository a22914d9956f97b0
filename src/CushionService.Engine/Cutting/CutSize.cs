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
