namespace CushionService.Documents.Sheets;

/// <summary>A column of a table.</summary>
/// <param name="Head">Its head.</param>
/// <param name="Kind">What is in it.</param>
internal sealed record Column(string Head, ColumnKind Kind = ColumnKind.Text);
