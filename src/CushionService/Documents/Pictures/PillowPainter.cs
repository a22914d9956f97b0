using CushionService.Documents.Drawings;
using CushionService.Engine.Scenes;

namespace CushionService.Documents.Pictures;

/// <summary>Draws the body of a cover without sides: between its seam line and the furthest that its crown is seen above and below
/// it.</summary>
/// <remarks>Lines of sight lie in upright planes. In each of many such planes, side by side across the view, the body is one chord of the
/// outline or several; over each chord the crown's highest and lowest sight line are looked for.</remarks>
/// <param name="rim">The outline of the body, on its upper face.</param>
/// <param name="upper">The upper face as it is seen.</param>
/// <param name="crown">How the filling rounds both faces up.</param>
/// <param name="camera">Looks at it.</param>
internal sealed class PillowPainter(IReadOnlyList<PlanePoint> rim, Surface upper, Crown crown, Camera camera)
{
    private const int Columns = 44;
    private const int Samples = 22;

    // Beside each corner, in millimetres, so that a chord that begins or ends there is met on both its sides.
    private const double Beside = 0.02;

    /// <summary>The body's parts, the furthest first.</summary>
    /// <returns>One part, or several where the outline is hollow and a line of sight crosses it more than once.</returns>
    public IReadOnlyList<PillowPart> Parts()
    {
        (PlanePoint On, PlanePoint Plan)[] corners = [.. rim.Select(point => (point, camera.Plan(upper.At(point))))];
        (double left, double right) = (corners.Min(corner => corner.Plan.X), corners.Max(corner => corner.Plan.X));
        SortedSet<double> columns =
        [
            .. Enumerable
                .Range(0, Columns + 1)
                // Planes lie closer together at both ends, where the outline turns away from the viewer.
                .Select(i => left + Beside + (right - left - 2 * Beside) * (1 - Math.Cos(Math.PI * i / Columns)) / 2),
        ];
        // A polygon's corners have planes of their own; a curve has more points than planes, which then meet it closely enough.
        if (corners.Length < 40)
        {
            columns.UnionWith(corners.SelectMany(corner => (double[])[corner.Plan.X - Beside, corner.Plan.X + Beside]));
        }

        var done = new List<PillowPart>();
        List<PillowPart> open = [];
        foreach (double column in columns.Where(column => column > left && column < right))
        {
            List<(PlanePoint From, PlanePoint To)> chords = ChordsAt(corners, column);
            if (chords.Count != open.Count)
            {
                done.AddRange(open);
                open = [.. chords.Select(_ => new PillowPart())];
            }

            for (int i = 0; i < chords.Count; i++)
            {
                Add(open[i], chords[i].From, chords[i].To);
            }
        }

        done.AddRange(open);
        return [.. done.Where(part => part.Near.Count > 1).OrderByDescending(part => part.Depth)];
    }

    // From the nearest to the furthest, on the face.
    private static List<(PlanePoint From, PlanePoint To)> ChordsAt((PlanePoint On, PlanePoint Plan)[] corners, double column)
    {
        var crossings = new List<(double Away, PlanePoint On)>();
        for (int i = 0; i < corners.Length; i++)
        {
            ((PlanePoint on, PlanePoint plan), (PlanePoint nextOn, PlanePoint next)) = (corners[i], corners[(i + 1) % corners.Length]);
            if (plan.X > column != next.X > column)
            {
                double share = (column - plan.X) / (next.X - plan.X);
                crossings.Add((plan.Y + share * (next.Y - plan.Y), on + share * (nextOn - on)));
            }
        }

        crossings.Sort(static (one, other) => one.Away.CompareTo(other.Away));
        return [.. Enumerable.Range(0, crossings.Count / 2).Select(i => (crossings[2 * i].On, crossings[2 * i + 1].On))];
    }

    private void Add(PillowPart part, PlanePoint from, PlanePoint to)
    {
        Vector outward = upper.Normal(from);
        Spot? high = null,
            low = null;
        for (int i = 0; i <= Samples; i++)
        {
            // Closer together near the rim, where the crown is steep.
            double share = (1 - Math.Cos(Math.PI * i / Samples)) / 2;
            PlanePoint at = from + share * (to - from);
            Vector flat = upper.At(at);
            double rise = i is 0 or Samples ? 0 : crown.At(at);
            Spot above = camera.See(flat + rise * outward),
                below = camera.See(flat - rise * outward);
            high = high is { } top && top.Y <= above.Y ? top : above;
            low = low is { } bottom && bottom.Y >= below.Y ? bottom : below;
        }

        part.Near.Add(camera.See(upper.At(from)));
        part.High.Add(high!.Value);
        part.Low.Add(low!.Value);
        part.Depth = Math.Max(part.Depth, camera.Plan(upper.At(from)).Y);
    }
}
