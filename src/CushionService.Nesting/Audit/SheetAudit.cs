namespace CushionService.Nesting.Audit;

/// <summary>Checks a layout on sheets against its problem. It shares no code with the search.</summary>
internal static class SheetAudit
{
    /// <summary>Returns when the layout keeps every invariant.</summary>
    /// <exception cref="LayoutAuditException">It does not; the message names the first that is broken.</exception>
    /// <param name="problem">The problem that was given.</param>
    /// <param name="layout">The layout that a search made of it.</param>
    /// <remarks>Invariants: allowed turns; every copy once, laid or said to be unplaced; each within
    /// its sheet; no two of a sheet overlap; no more sheets than there are; the cost is theirs; the
    /// bound does not exceed it.</remarks>
    public static void Check(SheetProblem problem, SheetLayout layout)
    {
        var rectangles = PlacedRectangles.Of(problem.Pieces, layout.Placements);
        EveryCopyOnce.Check(problem.Pieces, layout.Placements, layout.Unplaced);
        for (var index = 0; index < rectangles.Length; index++)
        {
            int used = layout.Placements[index].Sheet;
            if (used < 0 || used >= layout.Sheets.Length)
            {
                throw new LayoutAuditException($"A copy lies on no sheet: {layout.Placements[index]}.");
            }

            var sheet = problem.Sheets[layout.Sheets[used]];
            var r = rectangles[index];
            if (r.X < 0 || r.Y < 0 || r.X + r.Width > sheet.Width || r.Y + r.Length > sheet.Length)
            {
                throw new LayoutAuditException($"A copy lies outside its sheet: {layout.Placements[index]}.");
            }
        }

        foreach (var group in Enumerable.Range(0, rectangles.Length).GroupBy(index => layout.Placements[index].Sheet))
        {
            Demand(
                RectangleOverlap.Find([.. group.Select(index => rectangles[index])]) is null,
                $"Two copies overlap on sheet {group.Key}."
            );
        }

        foreach (var group in layout.Sheets.GroupBy(sheet => sheet))
        {
            Demand(
                group.Count() <= (problem.Sheets[group.Key].Available ?? int.MaxValue),
                $"More sheets of kind {group.Key} are used than there are."
            );
        }

        Demand(layout.Cost == layout.Sheets.Sum(sheet => problem.Sheets[sheet].Cost), "The cost is not that of the sheets used.");
        Demand(layout.LowerBound <= layout.Cost || !layout.Unplaced.IsEmpty, "The bound exceeds the cost.");
    }

    /// <summary>Throws what is broken.</summary>
    private static void Demand(bool holds, string invariant)
    {
        if (!holds)
        {
            throw new LayoutAuditException(invariant);
        }
    }
}
