namespace CushionService.Nesting.Rectangles.Sheets;

/// <summary>A cost that no layout on sheets can beat.</summary>
internal static class SheetCost
{
    /// <summary>The cost of covering the area with the sheets that are cheapest for their area, the last in part.</summary>
    /// <param name="problem">The sheets that can be had.</param>
    /// <param name="area">The area to cover, in square grid units.</param>
    /// <returns>In the unit of the sheets' costs, rounded up; of all sheets where even they are too few.</returns>
    public static long AtLeast(SheetProblem problem, Int128 area)
    {
        Int128 cost = 0;
        foreach (var sheet in problem.Sheets.OrderBy(sheet => (double)sheet.Cost / sheet.Width / sheet.Length))
        {
            Int128 each = (Int128)sheet.Width * sheet.Length;
            if (sheet.Available is { } available && available * each < area)
            {
                area -= available * each;
                cost += (Int128)available * sheet.Cost;
                continue;
            }

            return (long)(cost + (area * sheet.Cost + each - 1) / each);
        }

        return (long)cost;
    }
}
