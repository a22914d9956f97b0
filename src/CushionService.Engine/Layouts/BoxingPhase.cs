using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Layouts;

/// <summary>Where the motif lies on the panels of a boxing, so that they carry on the pattern of the top.</summary>
/// <param name="pattern">The pattern before its strips are joined.</param>
/// <param name="cushion">The cushion.</param>
/// <param name="fabric">The boxing's fabric.</param>
/// <param name="shift">How far the motif is from the middle of the face, where a print runs on along a row.</param>
/// <param name="carries">Whether the top is of the same fabric; if not, the boxing has a motif in its own middle.</param>
/// <remarks>Over the front edge the fabric runs on: the face's motif is as far above the strip's upper edge as the face's front edge
/// lies below it. All round, the pattern is upright on every side and on one level with the front, so that it meets at every upright corner
/// and join, with a motif in line with the face's (common practice, no source). Where the face's own pattern runs on over an edge to the
/// same motifs, nothing breaks there: over the back, for repeats are the same after a half turn unless the print runs one way, and over a
/// side where the repeat is as long as wide and so the same after a quarter turn (follows from the lattice).</remarks>
internal sealed class BoxingPhase(Pattern pattern, CushionSpecification cushion, FabricSpecification fabric, bool carries, Point shift)
{
    // In nanometres: what halves and slants are rounded by at most.
    private const long Rounded = 100;

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

        if (run.Face.Part.Kind == PartKind.Gore)
        {
            return panel with { Match = Over(run), MatchLimit = MatchLimit.None };
        }

        Point? match = _isAllRound ? Level(panel, run) : Over(run);
        MatchLimit limit =
            run.FaceEdge.Path.Length > 1 || !run.FaceEdge.Path[0].IsStraight ? MatchLimit.Curve
            : match is null ? MatchLimit.Slant
            : _isAllRound && runs.Length > 1 ? MatchLimit.RunsOn
            : !_isAllRound || !carries || (Over(run) is { } over && IsAlike(match.Value, over)) ? MatchLimit.None
            : MatchLimit.Upright;
        return panel with { Match = match, MatchLimit = limit };
    }

    // As high above the underside as the front's motif is, in line with the face's across.
    private Point Level(Panel panel, Run run)
    {
        // Where the front's upper edge is level with the panel: a wedge's front is lower than its other sides.
        bool isUpper = panel.Part.Kind is PartKind.ZipperUpper or PartKind.ClosureUpper;
        Length height =
            cushion.Construction != Construction.Wedge ? run.Above.Y
            : isUpper ? run.Above.Y - cushion.Thickness + cushion.FrontThickness
            : cushion.FrontThickness;
        if (!carries)
        {
            return new Point(run.Above.X + shift.X, height - cushion.BoxingHeight.HalfUp());
        }

        Point centre = CentreOf(run.Face),
            middle = run.FaceEdge.Middle;
        Edge front = run
            .Face.Edges.Where(edge => IsFront(run.Face, edge))
            .OrderBy(edge => edge.Middle.Y)
            .ThenByDescending(edge => edge.Length)
            .First();
        (double right, double up) = ((centre.X - middle.X).Nanometres, (centre.Y - middle.Y).Nanometres);
        double direction = run.FaceEdge.At(Length.FromNanometres(run.FaceEdge.Length.Nanometres / 2)).Direction;
        Length along = Length.FromNanometres((long)Math.Round((right * Math.Cos(direction)) + (up * Math.Sin(direction))));
        return new Point(run.Above.X + along, height + centre.Y - front.Middle.Y);
    }

    // Where the face's own motif lies if its fabric runs on over the edge; null where it does not.
    private Point? Over(Run run)
    {
        if (run.Face.Part.Kind != PartKind.Gore && run.FaceEdge is { Facing: EdgeFacing.Aslant, Path: [{ IsStraight: true }] })
        {
            return null;
        }

        if (!carries)
        {
            return run.Above.Moved(shift.X, -cushion.BoxingHeight.HalfUp());
        }

        Point centre = CentreOf(run.Face),
            middle = run.FaceEdge.Middle;
        (Length right, Length up) = (centre.X - middle.X, centre.Y - middle.Y);
        return run.FaceEdge.Facing switch
        {
            EdgeFacing.Up => fabric.OneWay ? null : run.Above.Moved(-right, -up),
            EdgeFacing.Right => TurnsAlike ? run.Above.Moved(up, -right) : null,
            EdgeFacing.Left => TurnsAlike ? run.Above.Moved(-up, right) : null,
            _ => run.Above.Moved(right, up),
        };
    }

    // Of a gore the point; of a face its middle, before stitching draws it in.
    private Point CentreOf(Panel face) =>
        face.Part.Kind == PartKind.Gore ? face.Match!.Value : new Point(face.Width.HalfUp() + shift.X, face.Height.HalfUp() + shift.Y);

    // Whether a motif on one point is one on the other too, but for rounding.
    private bool IsAlike(Point one, Point other)
    {
        if (fabric.LaidRepeat is not { } repeat)
        {
            return true;
        }

        (Length across, Length along) = (one.X - other.X, one.Y - other.Y);
        if (repeat.Width is { } width)
        {
            long columns = (long)Math.Round((double)across.Nanometres / width.Nanometres);
            (across, along) = (across - (columns * width), along - (columns * repeat.DropLength));
        }
        else
        {
            across = Length.Zero;
        }

        double off = repeat.Length is { } length ? Math.IEEERemainder(along.Nanometres, length.Nanometres) : 0;
        return Math.Abs(across.Nanometres) <= Rounded && Math.Abs(off) <= Rounded;
    }

    // A square lattice without a drop is the same after a quarter turn; a one-way print is not.
    private bool TurnsAlike =>
        !fabric.OneWay && fabric.LaidRepeat is { Drop: DropKind.Straight, Length: { } length, Width: { } width } && length == width;

    private bool IsFront(Run run) => IsFront(run.Face, run.FaceEdge);

    private bool IsFront(Panel face, Edge edge) =>
        edge.Facing == EdgeFacing.Down
        || face.Part.Kind == PartKind.Gore
        || (edge.Facing == EdgeFacing.Aslant && cushion.Outline.Sides.Any(side => side.Name == edge.Name && side.Side == Side.Front));

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
