namespace CushionService.Documents.Drawings;

/// <summary>An entry of a legend.</summary>
/// <param name="Words">What it says.</param>
/// <param name="Sign">Draws its sign in a box; null when it has none.</param>
internal sealed record LegendItem(string Words, Action<Canvas, Box>? Sign = null);
