namespace CushionService.Documents.Sheets;

/// <summary>A row of a table.</summary>
/// <param name="Cells">A cell for each column.</param>
/// <param name="Note">What is said under it across all columns, small; null for nothing.</param>
/// <param name="IsTotal">Whether it sums up what is above.</param>
internal sealed record Row(IReadOnlyList<Cell> Cells, string? Note = null, bool IsTotal = false)
{
    /// <summary>A row of plain cells.</summary>
    /// <param name="note">What is said under it; null for nothing.</param>
    /// <param name="cells">A text for each column; null for an empty cell.</param>
    public static Row Of(string? note, params IReadOnlyList<string?> cells) => new([.. cells.Select(text => new Cell(text ?? ""))], note);
}
