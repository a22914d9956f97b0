using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Cutting;

/// <summary>How long an edge of a panel is on its cut line.</summary>
/// <remarks>An arc that turns through θ grows by s θ; at a corner that turns through φ, the cut line with allowance s reaches on to
/// that of the next, with allowance t, by (t − s cos φ) / sin φ: by t at a right angle (general geometry). A sharp point is cut off
/// at two allowances (common practice, no source).</remarks>
internal static class CutEdge
{
    private const double LongestMitre = 2;

    /// <summary>The length.</summary>
    /// <param name="panel">A panel, its outline counter-clockwise.</param>
    /// <param name="number">Which of its edges.</param>
    /// <returns>To the nearest nanometre, at least zero.</returns>
    public static Length Along(Panel panel, int number)
    {
        int count = panel.Edges.Length;
        (Edge before, Edge edge, Edge next) = (
            panel.Edges[(number + count - 1) % count],
            panel.Edges[number],
            panel.Edges[(number + 1) % count]
        );
        double own = Allowance(edge),
            grown =
                Reach(own, Allowance(before), Turn(before.Path[^1], edge.Path[0]))
                + Reach(own, Allowance(next), Turn(edge.Path[^1], next.Path[0]));
        for (var i = 0; i < edge.Path.Length; i++)
        {
            grown += own * edge.Path[i].Sweep;
            grown += i > 0 ? 2 * Reach(own, own, Turn(edge.Path[i - 1], edge.Path[i])) : 0;
        }

        return Length.FromNanometres(Math.Max(0, edge.Length.Nanometres + (long)Math.Round(grown)));
    }

    private static double Allowance(Edge edge) => edge.Finish.Allowance.Nanometres;

    // Left is above zero, as at the corners of an outline that bulges.
    private static double Turn(Segment one, Segment next) => Math.IEEERemainder(next.StartDirection - one.EndDirection, 2 * Math.PI);

    private static double Reach(double own, double other, double turn)
    {
        double longest = LongestMitre * Math.Max(own, other);
        return Math.Abs(Math.Sin(turn)) < OutlineOffset.SmoothTurn
            ? 0
            : Math.Clamp((other - (own * Math.Cos(turn))) / Math.Sin(turn), -longest, longest);
    }
}
