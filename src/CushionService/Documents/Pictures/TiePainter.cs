using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Scenes;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Documents.Pictures;

/// <summary>Draws ties, two by two where the pattern marks that they are caught, and straps across the underside between their
/// marks.</summary>
/// <param name="source">What is drawn.</param>
/// <param name="sketch">Takes the shapes.</param>
internal sealed class TiePainter(PictureSource source, Sketch sketch)
{
    // How far the two ties of a pair lie apart at their ends, as a share of their length.
    private const double Apart = 0.28;

    private Camera Camera => sketch.Camera;

    /// <summary>Draws the ties behind the cushion.</summary>
    public void Behind() => Ties(behind: true);

    /// <summary>Draws the ties before it.</summary>
    public void Before() => Ties(behind: false);

    /// <summary>Draws the ties of one panel that is drawn away from its place.</summary>
    /// <param name="part">The panel.</param>
    /// <param name="shift">How far it is from its place.</param>
    public void On(ScenePart part, Vector shift)
    {
        if (source.Cushion.Trim.Ties is { } ties)
        {
            foreach ((Vector at, Vector outward, Vector along) in Caught(part, MarkPurpose.CatchTies))
            {
                Tie(at + shift, outward, along, ties, 1);
                Tie(at + shift, outward, along, ties, -1);
            }
        }
    }

    /// <summary>Draws the straps, where the underside is seen.</summary>
    public void Straps()
    {
        if (source.Cushion.Trim.Straps is not { } straps || Camera.Facing(-Vector.Up) < 0)
        {
            return;
        }

        // The marks of the left and the right seam are at the same places along.
        Vector[] ends = [.. Caught(MarkPurpose.CatchStrap).Select(caught => caught.At).OrderBy(at => Math.Round(at.Y)).ThenBy(at => at.X)];
        Vector half = Mm(straps.Width) / 2 * Vector.Back;
        for (int i = 0; i + 1 < ends.Length; i += 2)
        {
            (Vector from, Vector to) = (ends[i], ends[i + 1]);
            sketch.Fill([from - half, to - half, to + half, from + half], new Ink(source.Fabric(FabricRole.Straps).Tint, 1, Tint.Line, 2));
        }
    }

    private static double Mm(Engine.Measures.Length length) => length.Nanometres / 1e6;

    private void Ties(bool behind)
    {
        if (source.Cushion.Trim.Ties is not { } ties)
        {
            return;
        }

        foreach ((Vector at, Vector outward, Vector along) in Caught(MarkPurpose.CatchTies))
        {
            if (Camera.Facing(outward) < 0 == behind)
            {
                Tie(at, outward, along, ties, 1);
                Tie(at, outward, along, ties, -1);
            }
        }
    }

    private void Tie(Vector at, Vector outward, Vector along, TieSpecification ties, int side)
    {
        // The two ties of a pair spread to either side of the way out, so that both are seen.
        (double length, double width) = (Mm(ties.Length), Mm(ties.Width));
        Vector way = (outward + side * Apart * along).Unit(),
            across = width / 2 * way.Cross(Vector.Up).Unit(),
            end = at + length * way;
        sketch.Fill(
            [at - across, end - across, end + across, at + across],
            new Ink(source.Fabric(FabricRole.Ties).Tint, 1, Tint.Line, 1.8)
        );
    }

    // Where something is caught in a seam, the way out of the panel there, and the way along the edge.
    private IEnumerable<(Vector At, Vector Outward, Vector Along)> Caught(MarkPurpose purpose) =>
        source.Scene.Parts.SelectMany(part => Caught(part, purpose));

    private static IEnumerable<(Vector At, Vector Outward, Vector Along)> Caught(ScenePart part, MarkPurpose purpose)
    {
        foreach (PanelMark mark in part.Panel.Marks.Where(mark => mark.Purpose == purpose))
        {
            Edge edge = part.Panel.Edges.MinBy(edge => Distance(edge, PlanePoint.Of(mark.From)))!;
            SceneLine line = part.LineOf(new EdgeRef(part.Panel.Part, edge.Name));
            Vector at = part.At(mark.From);
            int nearest = Enumerable.Range(0, line.Points.Length).MinBy(i => (line.Points[i] - at).Size);
            Vector along = (line.Points[Math.Min(nearest + 1, line.Points.Length - 1)] - line.Points[Math.Max(nearest - 1, 0)]).Unit();
            yield return (at, line.Outward().ElementAt(nearest), along);
        }
    }

    private static double Distance(Edge edge, PlanePoint at)
    {
        List<PlanePoint> path = PlanePolygon.Path(edge.Path);
        double nearest = double.MaxValue;
        for (int i = 0; i + 1 < path.Count; i++)
        {
            PlanePoint side = path[i + 1] - path[i];
            double share = Math.Clamp((at - path[i]).Dot(side) / side.Dot(side), 0, 1);
            nearest = Math.Min(nearest, (at - path[i] - share * side).Size);
        }

        return nearest;
    }
}
