using CushionService.Nesting.Outlines.NoFit;

namespace CushionService.Nesting.Outlines.Placing;

/// <summary>The distances of rows of discs: every disc of one row is held against every disc of the other.</summary>
internal static class DiscPitches
{
    /// <summary>How far above one row another must lie, for every two.</summary>
    /// <param name="rows">The rows.</param>
    /// <param name="columns">The no-fit polygon of two discs, cut into columns.</param>
    /// <param name="least">No row lies nearer than this, grid units.</param>
    /// <returns>By lower and upper row, whole grid units, rounded up.</returns>
    public static double[,] Of(List<DiscRow> rows, SliceIndex columns, double least)
    {
        var pitches = new double[rows.Count, rows.Count];
        for (var lower = 0; lower < rows.Count; lower++)
        {
            for (var upper = 0; upper < rows.Count; upper++)
            {
                var pitch = least;
                foreach (var lying in rows[lower].Lefts)
                {
                    foreach (var moving in rows[upper].Lefts)
                    {
                        pitch = Math.Max(pitch, Math.Ceiling(columns.Highest(moving - lying) - SliceIndex.Tolerance));
                    }
                }

                pitches[lower, upper] = pitch;
            }
        }

        return pitches;
    }
}
