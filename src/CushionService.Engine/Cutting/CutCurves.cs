using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Patterns.Panels;
using Line = CushionService.Engine.Cutting.OutlineOffset.Line;

namespace CushionService.Engine.Cutting;

/// <summary>Moves a panel's outline outward as <see cref="OutlineOffset"/> does, and keeps its arcs: each lies outside the seam line by
/// exactly the allowance there. For drawings at true size; layouts use the chords, which never cut inside.</summary>
internal static class CutCurves
{
    // Less is the rounding of an arc's end.
    private const double Gap = 2 * OutlineOffset.Micrometre;

    /// <summary>The cut outline, closed, counter-clockwise, in the panel's coordinates.</summary>
    /// <param name="panel">A panel, its outline counter-clockwise.</param>
    /// <returns>Lines and arcs end to end; none where an arc cannot be moved: a hollow narrower than its allowance, or one that meets its
    /// neighbour in an inward corner.</returns>
    public static ImmutableArray<Segment> Of(Panel panel)
    {
        List<(Line First, Line Last, Segment Seam)> sides = [];
        foreach (Edge edge in panel.Edges)
        {
            double allowance = edge.Finish.Allowance.Nanometres;
            foreach (Segment segment in edge.Path)
            {
                // A hollow arc moved outward shrinks to a point and turns inside out beyond it.
                if (segment.Sweep < 0 && segment.Radius - allowance < OutlineOffset.Micrometre)
                {
                    return [];
                }

                sides.Add(
                    (
                        Line.Along(segment.From, segment.StartDirection, allowance),
                        Line.Along(segment.To, segment.EndDirection, allowance),
                        segment
                    )
                );
            }
        }

        for (var i = 0; i < sides.Count; i++)
        {
            (_, Line last, Segment seam) = sides[i];
            (Line first, _, Segment next) = sides[(i + 1) % sides.Count];
            if (Cross(last, first) < -OutlineOffset.SmoothTurn && !(seam.IsStraight && next.IsStraight))
            {
                return [];
            }
        }

        return Joined(sides);
    }

    private static ImmutableArray<Segment> Joined(List<(Line First, Line Last, Segment Seam)> sides)
    {
        var outline = ImmutableArray.CreateBuilder<Segment>();
        Point? reached = null;
        List<Point> corners = [];
        for (var i = 0; i < sides.Count; i++)
        {
            (Line first, Line last, Segment seam) = sides[i];
            if (!seam.IsStraight)
            {
                GoTo(first.Beside);
                outline.Add(new Segment(first.Beside, last.Beside, seam.Sweep));
                reached = last.Beside;
            }

            corners.Clear();
            OutlineOffset.Join(last, sides[(i + 1) % sides.Count].First, corners);
            corners.ForEach(GoTo);
        }

        GoTo(outline[0].From);
        return outline.ToImmutable();

        // The first point only starts the outline.
        void GoTo(Point to)
        {
            if (reached is { } from)
            {
                if (double.Hypot((to.X - from.X).Nanometres, (to.Y - from.Y).Nanometres) <= Gap)
                {
                    return;
                }

                outline.Add(new Segment(from, to));
            }

            reached = to;
        }
    }

    private static double Cross(Line one, Line next) => (one.DirectionX * next.DirectionY) - (one.DirectionY * next.DirectionX);
}
