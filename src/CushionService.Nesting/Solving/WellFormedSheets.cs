namespace CushionService.Nesting.Solving;

/// <summary>Refuses sheet problems that make no sense before a kernel sees them.</summary>
internal static class WellFormedSheets
{
    /// <summary>Returns when the problem can be nested. A piece may be larger than every sheet: it is then listed as unplaced.</summary>
    /// <param name="problem">What a caller made.</param>
    /// <exception cref="ArgumentException">A number is out of range, or a piece is aligned.</exception>
    public static void Check(SheetProblem problem)
    {
        WellFormed.Demand(!problem.Pieces.IsDefaultOrEmpty, "There must be at least one piece.");
        WellFormed.Demand(!problem.Sheets.IsDefaultOrEmpty, "There must be at least one sheet.");
        WellFormed.CheckPieces(problem.Pieces);
        foreach (var sheet in problem.Sheets)
        {
            WellFormed.Demand(
                sheet
                    is { Width: > 0 and <= WellFormed.Largest, Length: > 0 and <= WellFormed.Largest, Cost: >= 0, Available: null or >= 0 },
                "A sheet must have an extent and a cost of at least 0."
            );
        }

        foreach (var piece in problem.Pieces)
        {
            WellFormed.Demand(piece.Alignment is null, "Pieces on sheets are not aligned.");
        }
    }
}
