using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Layouts;

/// <summary>Where the motif lies on the panels of a boxing, so that they carry on the pattern of the top.</summary>
/// <param name="pattern">The pattern before its strips are joined.</param>
/// <param name="cushion">The cushion.</param>
/// <param name="fabric">The boxing's fabric.</param>
/// <param name="shift">How far the motif is from the middle of the face, where a print runs on along a row.</param>
/// <param name="carries">Whether the top is of the same fabric; if not, the boxing has a motif in its own middle.</param>
/// <remarks>Over the front edge the fabric runs on: the face's motif is as far above the strip's upper edge as the face's front edge
/// lies below it. All round, the pattern is upright on every side (common practice, no source). Repeats are the same after a half turn,
/// so that the back, cut on the front's phase, carries on the face's too unless the print runs one way. The sides carry it on where the
/// repeat is as long as wide, which is the same after a quarter turn; else they are level with the front and a motif lies in line with the
/// face's (follows from the lattice).</remarks>
internal sealed class BoxingPhase(Pattern pattern, CushionSpecification cushion, FabricSpecification fabric, bool carries, Point shift)
{
    private readonly bool _isAllRound = cushion.Match.Boxing == BoxingMatch.AllRound;

    /// <summary>The panel with its matching point, and what keeps it from carrying the pattern on.</summary>
    /// <param name="panel">A panel of the boxing.</param>
    /// <returns>Without a matching point where none of its edges shows the pattern.</returns>
    public Panel On(Panel panel)
    {
        Run[] runs = [.. panel.Edges.Select(edge => RunOf(panel, edge)).OfType<Run>()];
        Run? front = Longest(runs.Where(IsFront)),
            shown = front ?? (_isAllRound ? Longest(runs) : null);
        if (shown is not { } run)
        {
            return panel with { Match = null, MatchLimit = _isAllRound ? MatchLimit.Upright : MatchLimit.None };
        }

        MatchLimit limit =
            run.Face.Part.Kind == PartKind.Gore ? MatchLimit.None
            : run.FaceEdge.Path.Length > 1 || !run.FaceEdge.Path[0].IsStraight ? MatchLimit.Curve
            : run.FaceEdge.Facing == EdgeFacing.Aslant ? MatchLimit.Slant
            : _isAllRound && runs.Length > 1 ? MatchLimit.RunsOn
            : IsCarriedOver(run.FaceEdge.Facing) ? MatchLimit.None
            : MatchLimit.Upright;
        return panel with { Match = limit == MatchLimit.Slant ? null : PointOf(run), MatchLimit = limit };
    }

    private Point PointOf(Run run)
    {
        if (!carries)
        {
            return run.Above.Moved(shift.X, -cushion.BoxingHeight.HalfUp());
        }

        // Of a gore the point; of a face its middle, before stitching draws it in.
        Point centre =
            run.Face.Part.Kind == PartKind.Gore
                ? run.Face.Match!.Value
                : new Point(run.Face.Width.HalfUp() + shift.X, run.Face.Height.HalfUp() + shift.Y);
        Point middle = run.FaceEdge.Middle;
        (Length right, Length up) = (centre.X - middle.X, centre.Y - middle.Y);
        Length level = centre.Y;
        return run.FaceEdge.Facing switch
        {
            EdgeFacing.Up => run.Above.Moved(-right, -up),
            EdgeFacing.Right => run.Above.Moved(up, TurnsAlike ? -right : level),
            EdgeFacing.Left => run.Above.Moved(-up, TurnsAlike ? right : level),
            _ => run.Above.Moved(right, up),
        };
    }

    // A square lattice without a drop is the same after a quarter turn; a one-way print is not.
    private bool TurnsAlike =>
        !fabric.OneWay && fabric.LaidRepeat is { Drop: DropKind.Straight, Length: { } length, Width: { } width } && length == width;

    private bool IsCarriedOver(EdgeFacing edge) =>
        edge switch
        {
            EdgeFacing.Up => !fabric.OneWay,
            EdgeFacing.Left or EdgeFacing.Right => TurnsAlike,
            _ => true,
        };

    private bool IsFront(Run run) =>
        run.FaceEdge.Facing == EdgeFacing.Down
        || run.Face.Part.Kind == PartKind.Gore
        || (
            run.FaceEdge.Facing == EdgeFacing.Aslant
            && cushion.Outline.Sides.Any(side => side.Name == run.FaceEdge.Name && side.Side == Side.Front)
        );

    // Of equals the first, so that the answer does not depend on how a pattern lists its edges.
    private static Run? Longest(IEnumerable<Run> runs)
    {
        Run? longest = null;
        foreach (Run run in runs)
        {
            longest = longest is { } known && known.FaceEdge.Length >= run.FaceEdge.Length ? longest : run;
        }

        return longest;
    }

    // An edge that is sewn to the top; of a strip that reaches the bottom alone, the edge there, seen from as high as the boxing.
    private Run? RunOf(Panel panel, Edge edge)
    {
        foreach (Panel face in pattern.Panels.Where(face => face.Part == PartName.Top || face.Part.Kind == PartKind.Gore))
        {
            foreach (Edge of in face.Edges)
            {
                EdgeName name = face.Part.Kind == PartKind.Gore ? new EdgeName(EdgeWord.Gore, face.Part.Number) : of.Name;
                bool meets = face.Part.Kind != PartKind.Gore || of.Name == EdgeName.Rim;
                if (meets && edge.Name == name.With(EdgeWord.Top))
                {
                    return new Run(face, of, edge.Middle);
                }

                bool isLower = panel.Part.Kind is PartKind.ZipperLower or PartKind.ClosureLower;
                if (meets && isLower && edge.Name == name.With(EdgeWord.Bottom))
                {
                    return new Run(face, of, edge.Middle.Moved(Length.Zero, cushion.BoxingHeight));
                }
            }
        }

        return null;
    }

    // A run of the seam line: the face on it, its edge there, and the middle of that edge as it lies on the boxing's panel.
    private readonly record struct Run(Panel Face, Edge FaceEdge, Point Above);
}
