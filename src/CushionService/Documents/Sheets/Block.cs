namespace CushionService.Documents.Sheets;

/// <summary>A part of a sheet: what it says, not how it looks. One writer makes HTML of it, another pages of a PDF.</summary>
internal abstract record Block;
