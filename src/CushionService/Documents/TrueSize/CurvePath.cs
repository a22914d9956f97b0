using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using CushionService.Engine.Geometry;

namespace CushionService.Documents.TrueSize;

/// <summary>Lines and arcs as the path of a drawing, in millimetres. An arc becomes cubic Bézier curves.</summary>
/// <remarks>The control points of an arc of θ lie 4/3 tan(θ/4) radii from its ends along its tangents; over an eighth of a turn the curve
/// departs from the arc by less than 5 · 10⁻⁶ of its radius (general geometry).</remarks>
internal static class CurvePath
{
    private const double Eighth = Math.PI / 4;
    private const double Millimetre = 1e6;

    /// <summary>The closed path.</summary>
    /// <param name="outline">Lines and arcs, each starting where the one before ends.</param>
    /// <returns>Commands M, L, C and Z with absolute coordinates; empty for an empty outline.</returns>
    public static string Of(ImmutableArray<Segment> outline)
    {
        if (outline.IsEmpty)
        {
            return "";
        }

        var path = new StringBuilder();
        Add('M', outline[0].From);
        for (int i = 0; i < outline.Length; i++)
        {
            Segment line = outline[i];
            if (!line.IsStraight)
            {
                AddArc(line);
            }
            // Z draws the last line, if it is straight.
            else if (i < outline.Length - 1)
            {
                Add('L', line.To);
            }
        }

        return path.Append('Z').ToString();

        void AddArc(Segment arc)
        {
            int count = (int)Math.Ceiling(Math.Abs(arc.Sweep) / Eighth);
            double sweep = arc.Sweep / count;
            double reach = 4.0 / 3 * Math.Tan(Math.Abs(sweep) / 4) * arc.Radius;
            for (int i = 0; i < count; i++)
            {
                (Point from, Point to) = (arc.At((double)i / count), i == count - 1 ? arc.To : arc.At((double)(i + 1) / count));
                (double start, double end) = (arc.StartDirection + i * sweep, arc.StartDirection + (i + 1) * sweep);
                path.Append('C');
                AddNumbers(from.X.Nanometres + reach * Math.Cos(start), from.Y.Nanometres + reach * Math.Sin(start));
                path.Append(' ');
                AddNumbers(to.X.Nanometres - reach * Math.Cos(end), to.Y.Nanometres - reach * Math.Sin(end));
                path.Append(' ');
                AddNumbers(to.X.Nanometres, to.Y.Nanometres);
            }
        }

        void Add(char command, Point point)
        {
            path.Append(command);
            AddNumbers(point.X.Nanometres, point.Y.Nanometres);
        }

        void AddNumbers(double x, double y) =>
            path.Append(CultureInfo.InvariantCulture, $"{x / Millimetre:0.####},{y / Millimetre:0.####}");
    }
}
