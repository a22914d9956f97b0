namespace CushionService.Documents.Drawings;

/// <summary>Finds a free place for the letter of a mark.</summary>
internal static class LetterSpot
{
    /// <summary>The nearest free box: inward first, then around in eighths of a turn, then farther out.</summary>
    /// <returns>Null when everything near is taken.</returns>
    /// <param name="at">The mark, in user units.</param>
    /// <param name="inward">Away from the nearest edge of the piece, one long.</param>
    /// <param name="size">Of the letter.</param>
    /// <param name="page">Where letters may be.</param>
    /// <param name="taken">What is drawn already.</param>
    public static Box? Near(Spot at, Spot inward, Spot size, Box page, IReadOnlyList<Box> taken)
    {
        for (double ring = 1.4; ring < 4; ring += 0.6)
        {
            foreach (int eighth in (ReadOnlySpan<int>)[0, 1, -1, 2, -2, 3, -3, 4])
            {
                double angle = Math.PI / 4 * eighth;
                var way = new Spot(
                    inward.X * Math.Cos(angle) - inward.Y * Math.Sin(angle),
                    inward.X * Math.Sin(angle) + inward.Y * Math.Cos(angle)
                );
                Spot centre = at + ring * size.Y * way;
                var box = new Box(centre.X - size.X / 2, centre.Y - size.Y / 2, size.X, size.Y);
                if (page.Holds(box) && !taken.Any(box.Overlaps))
                {
                    return box;
                }
            }
        }

        return null;
    }
}
