namespace CushionService.Documents.Sheets;

/// <summary>A table. Its head is repeated on every page that it runs over.</summary>
/// <param name="Caption">What it lists; empty where the heading above says so.</param>
/// <param name="Columns">The columns.</param>
/// <param name="Rows">The rows, each with as many cells.</param>
/// <param name="Name">Its class in a style sheet; empty for none.</param>
internal sealed record Table(string Caption, IReadOnlyList<Column> Columns, IReadOnlyList<Row> Rows, string Name = "") : Block;
