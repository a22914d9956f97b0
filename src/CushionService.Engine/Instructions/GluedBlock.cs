using CushionService.Engine.Measures;

namespace CushionService.Engine.Instructions;

/// <summary>A block of foam that is glued from sheets.</summary>
/// <param name="Item">The stock.</param>
/// <param name="Height">Of the block, once it is glued.</param>
/// <param name="Sheets">How many lie on each other, at least 1.</param>
/// <param name="Slit">What the last is slit to; null where it stays as thick as it is.</param>
/// <param name="Parts">How many each of them is glued from, at least 1.</param>
internal sealed record GluedBlock(string Item, Length Height, int Sheets, Length? Slit, int Parts);
