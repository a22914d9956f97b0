namespace CushionService.Documents.Drawings;

/// <summary>The largest upright rectangle inside an outline, among those on a coarse grid: where its label may stand.</summary>
/// <remarks>Largest rectangle under a histogram, row by row; the grid keeps it cheap and leaves a natural margin.</remarks>
internal static class LabelRoom
{
    private const int Cells = 20;

    /// <summary>The room inside the outline, within its visible part; empty when there is none.</summary>
    /// <param name="outline">Corners in the drawing, in either sense.</param>
    /// <param name="visible">In user units.</param>
    public static Box Within(ReadOnlySpan<Spot> outline, Box visible)
    {
        double across = visible.Width / Cells;
        double down = visible.Height / Cells;
        Span<int> heights = stackalloc int[Cells];
        heights.Clear();
        var best = new Box(visible.X, visible.Y, 0, 0);
        for (int row = 0; row < Cells; row++)
        {
            for (int column = 0; column < Cells; column++)
            {
                var cell = new Box(visible.X + column * across, visible.Y + row * down, across, down);
                // How many cells upwards from this row lie inside without a gap.
                heights[column] = Outline.Holds(outline, cell) ? heights[column] + 1 : 0;
            }

            for (int first = 0; first < Cells; first++)
            {
                int height = heights[first];
                for (int last = first; last < Cells && height > 0; last++)
                {
                    height = Math.Min(height, heights[last]);
                    var candidate = new Box(
                        visible.X + first * across,
                        visible.Y + (row + 1 - height) * down,
                        (last - first + 1) * across,
                        height * down
                    );
                    best = candidate.Width * candidate.Height > best.Width * best.Height ? candidate : best;
                }
            }
        }

        return best;
    }
}
