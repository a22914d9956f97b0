using System.Globalization;
using System.Text;
using CushionService.Documents.Drawings;

namespace CushionService.Documents.Pictures;

/// <summary>Writes shapes as the data of a path: whole units, without points that one would not see.</summary>
internal static class SketchPath
{
    // Two thirds of a unit, of which a picture is a thousand wide.
    private const double Tolerance = 0.66;

    /// <summary>Adds a shape.</summary>
    /// <param name="data">Takes the commands of the path.</param>
    /// <param name="points">In units of the picture.</param>
    /// <param name="closed">Whether the last joins the first.</param>
    public static void Write(StringBuilder data, IReadOnlyList<Spot> points, bool closed)
    {
        List<Spot> kept = Simplified(points);
        (long X, long Y)? last = null;
        int written = 0;
        var text = new StringBuilder();
        foreach (Spot point in kept)
        {
            (long X, long Y) at = ((long)Math.Round(point.X), (long)Math.Round(point.Y));
            // Points that round to the same unit are one.
            if (at != last)
            {
                text.Append(CultureInfo.InvariantCulture, $"{(written == 0 ? 'M' : 'L')}{at.X} {at.Y}");
                written++;
                last = at;
            }
        }

        if (written > (closed ? 2 : 1))
        {
            data.Append(text);
            if (closed)
            {
                data.Append('Z');
            }
        }
    }

    // Douglas and Peucker, Cartographica 10, 1973.
    private static List<Spot> Simplified(IReadOnlyList<Spot> points)
    {
        var keep = new bool[points.Count];
        keep[0] = keep[^1] = true;
        var spans = new Stack<(int From, int To)>();
        // A stack instead of recursion: a curve has many points, and an order decides how many.
        spans.Push((0, points.Count - 1));
        while (spans.TryPop(out (int From, int To) span))
        {
            (double most, int at) = (Tolerance, -1);
            for (int i = span.From + 1; i < span.To; i++)
            {
                double off = Off(points[span.From], points[span.To], points[i]);
                (most, at) = off > most ? (off, i) : (most, at);
            }

            if (at > 0)
            {
                keep[at] = true;
                spans.Push((span.From, at));
                spans.Push((at, span.To));
            }
        }

        return [.. points.Where((_, i) => keep[i])];
    }

    private static double Off(Spot from, Spot to, Spot at)
    {
        Spot side = to - from;
        return side.Size < 1e-9 ? (at - from).Size : Math.Abs(side.X * (at.Y - from.Y) - side.Y * (at.X - from.X)) / side.Size;
    }
}
