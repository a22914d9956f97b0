using CushionService.Contract.Answers;

namespace CushionService.Documents.Drawings;

/// <summary>Closed outlines of straight edges.</summary>
internal static class Outline
{
    /// <summary>A piece's corners on the fabric, turned counter-clockwise and moved as its placement says.</summary>
    /// <param name="piece">A piece with corners.</param>
    /// <param name="placement">Where it lies; its rotation is 0, 90, 180 or 270 degrees.</param>
    /// <remarks>After the turn the piece is moved back so that its extent starts at (0, 0) again.</remarks>
    public static Spot[] Placed(PieceAnswer piece, PlacementAnswer placement)
    {
        IReadOnlyList<PointAnswer> points = piece.Points!;
        var corners = new Spot[points.Count];
        for (int i = 0; i < corners.Length; i++)
        {
            (double x, double y) = (points[i].X, points[i].Y);
            Spot turned = placement.Rotation switch
            {
                90 => new Spot(piece.Length - y, x),
                180 => new Spot(piece.Width - x, piece.Length - y),
                270 => new Spot(y, piece.Width - x),
                _ => new Spot(x, y),
            };
            corners[i] = new Spot(placement.X + turned.X, placement.Y + turned.Y);
        }

        return corners;
    }

    /// <summary>A piece's corners, from its lower left; those of the rectangle when it has no points.</summary>
    /// <param name="piece">The piece, as cut and not turned.</param>
    public static Spot[] Of(PieceAnswer piece) =>
        piece.Points is { } points
            ? [.. points.Select(point => new Spot(point.X, point.Y))]
            : [new(0, 0), new(piece.Width, 0), new(piece.Width, piece.Length), new(0, piece.Length)];

    /// <summary>Whether a box lies inside the outline: its centre does, and no edge enters it.</summary>
    /// <param name="outline">Corners in either sense.</param>
    /// <param name="box">A box with an extent.</param>
    public static bool Holds(ReadOnlySpan<Spot> outline, Box box)
    {
        Spot centre = box.Centre;
        bool inside = false;
        Spot from = outline[^1];
        foreach (Spot to in outline)
        {
            if (Enters(from, to, box))
            {
                return false;
            }

            if (from.Y > centre.Y != to.Y > centre.Y && centre.X < from.X + (centre.Y - from.Y) / (to.Y - from.Y) * (to.X - from.X))
            {
                inside = !inside;
            }

            from = to;
        }

        return inside;
    }

    /// <summary>Whether a segment passes through the inside of a box (Liang and Barsky's clipping).</summary>
    /// <param name="from">One end of the segment.</param>
    /// <param name="to">The other end.</param>
    /// <param name="box">A segment along one of its sides does not enter it.</param>
    public static bool Enters(Spot from, Spot to, Box box)
    {
        (double enter, double leave) = (0, 1);
        Spot step = to - from;
        return Clip(step.X, box.X - from.X, box.Right - from.X, ref enter, ref leave)
            && Clip(step.Y, box.Y - from.Y, box.Bottom - from.Y, ref enter, ref leave)
            && enter < leave;
    }

    private static bool Clip(double step, double low, double high, ref double enter, ref double leave)
    {
        if (step == 0)
        {
            return low < 0 && high > 0;
        }

        (double first, double last) = step > 0 ? (low / step, high / step) : (high / step, low / step);
        enter = Math.Max(enter, first);
        leave = Math.Min(leave, last);
        return enter < leave;
    }
}
