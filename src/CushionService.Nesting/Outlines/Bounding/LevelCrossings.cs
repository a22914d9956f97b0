namespace CushionService.Nesting.Outlines.Bounding;

/// <summary>The crossings of a polygon's boundary with a level line.</summary>
internal static class LevelCrossings
{
    /// <summary>Where the boundary crosses a level just above or just below it, from left to right, down and up to whole units.</summary>
    /// <param name="corners">A simple polygon.</param>
    /// <param name="level">A y, in grid units.</param>
    /// <param name="above">Whether just above the level; else just below it.</param>
    /// <returns>An even number: what enters leaves again.</returns>
    public static List<(long Down, long Up)> Of(GridPoint[] corners, long level, bool above)
    {
        var crossings = new List<(long Down, long Up, double At, double Lean)>();
        for (var index = 0; index < corners.Length; index++)
        {
            var (a, b) = (corners[index], corners[(index + 1) % corners.Length]);
            (a, b) = a.Y < b.Y ? (a, b) : (b, a);
            if (above ? a.Y <= level && level < b.Y : a.Y < level && level <= b.Y)
            {
                Int128 across = (Int128)(b.X - a.X) * (level - a.Y);
                Int128 rise = b.Y - a.Y;
                var down = a.X + (long)((across - (across % rise + rise) % rise) / rise);
                var lean = (double)(b.X - a.X) / (b.Y - a.Y);
                crossings.Add((down, across % rise == 0 ? down : down + 1, a.X + (double)across / (double)rise, above ? lean : -lean));
            }
        }

        // Two that meet at the level part beyond it as they lean.
        crossings.Sort(static (one, other) => (one.At, one.Lean).CompareTo((other.At, other.Lean)));
        return [.. crossings.Select(crossing => (crossing.Down, crossing.Up))];
    }
}
