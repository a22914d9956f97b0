using System.Collections.Immutable;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Scenes;

/// <summary>An edge as it lies in the scene.</summary>
/// <param name="Edge">The edge.</param>
/// <param name="Points">From its start to its end.</param>
/// <param name="Flat">The same points on the whole panel.</param>
/// <param name="Patch">The patch that it is of.</param>
public sealed record SceneLine(EdgeRef Edge, ImmutableArray<Vector> Points, ImmutableArray<PlanePoint> Flat, ScenePatch Patch)
{
    /// <summary>The directions away from the panel at each point, in the panel's own surface, one long.</summary>
    /// <remarks>The cross product gives the right line but either way, as a panel may be seen from its wrong side: a
    /// point just beyond the edge on the panel decides.</remarks>
    public IEnumerable<Vector> Outward()
    {
        for (var i = 0; i < Points.Length; i++)
        {
            Vector along = Points[Math.Min(i + 1, Points.Length - 1)] - Points[Math.Max(i - 1, 0)];
            PlanePoint flat = Flat[Math.Min(i + 1, Points.Length - 1)] - Flat[Math.Max(i - 1, 0)];
            // Counter-clockwise, the panel lies on the left of its edge.
            Vector normal = Patch.Surface.Normal(Flat[i]),
                outward = along.Cross(normal).Unit();
            PlanePoint beyond = Flat[i] + (0.1 / Math.Max(flat.Size, 1e-9) * new PlanePoint(flat.Y, -flat.X));
            yield return outward.Dot(Patch.Surface.At(beyond) - Points[i]) < 0 ? -outward : outward;
        }
    }

    /// <summary>The directions away from the panel at each point of several lines; where two lines meet, half-way between theirs.</summary>
    /// <param name="lines">Lines of a scene, in any order.</param>
    /// <returns>For each line, one direction a point.</returns>
    public static ImmutableArray<Vector[]> OutwardOf(IReadOnlyList<SceneLine> lines)
    {
        // In millimetres: lines meet in a point that each rounds for itself.
        const double Near = 0.5;
        ImmutableArray<Vector[]> outward = [.. lines.Select(line => line.Outward().ToArray())];
        (int Line, int Point)[] ends =
        [
            .. Enumerable.Range(0, lines.Count).SelectMany(i => ((int, int)[])[(i, 0), (i, lines[i].Points.Length - 1)]),
        ];
        for (var i = 0; i < ends.Length; i++)
        {
            for (int j = i + 1; j < ends.Length; j++)
            {
                ((int one, int at), (int other, int to)) = (ends[i], ends[j]);
                if ((lines[one].Points[at] - lines[other].Points[to]).Size < Near)
                {
                    outward[one][at] = outward[other][to] = (outward[one][at] + outward[other][to]).Unit();
                }
            }
        }

        return outward;
    }
}
