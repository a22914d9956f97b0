using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Materials;

/// <summary>The tape that binds the raw edges of one cover: folded over them, sewn on in one row, turned under where it begins and ends,
/// and folded to a mitre at each corner (common practice, no source).</summary>
/// <param name="Edges">Length of the raw edges.</param>
/// <param name="Runs">How many lengths of tape: one round a piece whose every edge is raw, else one for each stretch of raw edges.</param>
/// <param name="Corners">How many corners they turn.</param>
internal readonly record struct EdgeBinding(Length Edges, int Runs, int Corners)
{
    // In radians; less is a bend that the tape takes without a fold.
    private const double LeastTurn = 0.2;

    /// <summary>The binding of one cover.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="pattern">Its pattern.</param>
    /// <returns>Zero length where its edges are not bound, or none stays raw.</returns>
    public static EdgeBinding Of(CushionSpecification cushion, Pattern pattern)
    {
        if (cushion.EdgeFinish != RawEdgeFinish.Bound)
        {
            return default;
        }

        (int runs, int corners) = (0, 0);
        foreach ((Panel panel, bool[] raw) in Threading.Raw(cushion, pattern))
        {
            // A loop begins nowhere, and has two ends all the same.
            runs += raw.All(one => one) ? 1 : raw.Where((one, i) => one && !raw[(i + raw.Length - 1) % raw.Length]).Count();
            for (var i = 0; i < raw.Length; i++)
            {
                Edge edge = panel.Edges[i];
                if (raw[i])
                {
                    corners += edge.Path.Skip(1).Where((segment, at) => Turns(edge.Path[at], segment)).Count();
                    int next = (i + 1) % raw.Length;
                    corners += raw[next] && Turns(edge.Path[^1], panel.Edges[next].Path[0]) ? 1 : 0;
                }
            }
        }

        return new EdgeBinding(Threading.RawEdges(cushion, pattern), runs, corners);
    }

    /// <summary>The tape for one cover, up to what a tape measure is read by.</summary>
    /// <param name="practice">What is usual.</param>
    /// <param name="step">What a tape measure is read by.</param>
    public Length Tape(TrimPractice practice, Length step) =>
        (Edges + (2 * Runs * practice.BindingEnd) + (Corners * practice.BindingCorner)).RoundUpTo(step);

    /// <summary>How the tape comes about.</summary>
    /// <param name="covers">How many covers.</param>
    /// <param name="practice">What is usual.</param>
    /// <param name="step">What a tape measure is read by.</param>
    public Message Because(int covers, TrimPractice practice, Length step) =>
        MaterialTexts.Binding(
            covers,
            Tape(practice, step),
            Edges.RoundUpTo(step),
            Runs,
            practice.BindingEnd,
            Corners,
            practice.BindingCorner
        );

    private static bool Turns(Segment one, Segment next) =>
        Math.Abs(Math.IEEERemainder(next.StartDirection - one.EndDirection, 2 * Math.PI)) > LeastTurn;
}
