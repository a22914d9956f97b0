namespace CushionService.Documents.Drawings;

/// <summary>A rectangle of a drawing, from its upper left corner, in the drawing's user units.</summary>
internal readonly record struct Box(double X, double Y, double Width, double Height)
{
    /// <summary>Where its right side is.</summary>
    public double Right => X + Width;

    /// <summary>Where its lower side is: y runs down the page.</summary>
    public double Bottom => Y + Height;

    public Spot Centre => new(X + Width / 2, Y + Height / 2);

    /// <summary>The box without a margin on each side; empty, not inside out, when the margin is too wide.</summary>
    /// <param name="margin">At least 0, in user units.</param>
    public Box Inset(double margin)
    {
        double across = Math.Min(margin, Width / 2);
        double down = Math.Min(margin, Height / 2);
        return new Box(X + across, Y + down, Width - 2 * across, Height - 2 * down);
    }

    /// <summary>The box with a margin on each side.</summary>
    public Box Grown(double margin) => new(X - margin, Y - margin, Width + 2 * margin, Height + 2 * margin);

    /// <summary>Whether two boxes share more than an edge.</summary>
    public bool Overlaps(Box other) => X < other.Right && other.X < Right && Y < other.Bottom && other.Y < Bottom;

    /// <summary>Whether another box lies inside.</summary>
    public bool Holds(Box other) => other.X >= X && other.Right <= Right && other.Y >= Y && other.Bottom <= Bottom;

    /// <summary>The smallest box that holds the spots.</summary>
    /// <param name="spots">At least one.</param>
    public static Box Around(ReadOnlySpan<Spot> spots)
    {
        (double left, double top, double right, double bottom) = (spots[0].X, spots[0].Y, spots[0].X, spots[0].Y);
        foreach (Spot spot in spots)
        {
            (left, right) = (Math.Min(left, spot.X), Math.Max(right, spot.X));
            (top, bottom) = (Math.Min(top, spot.Y), Math.Max(bottom, spot.Y));
        }

        return new Box(left, top, right - left, bottom - top);
    }
}
