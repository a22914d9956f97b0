using CushionService.Documents.Drawings;

namespace CushionService.Documents.TrueSize;

/// <summary>A sheet of paper with what is drawn on it.</summary>
/// <param name="Number">Its number among all sheets, from 1.</param>
/// <param name="Size">In millimetres.</param>
/// <param name="Parts">The whole pieces, or the one part of a piece that is larger than the paper.</param>
internal sealed record PatternSheet(int Number, Spot Size, IReadOnlyList<PatternPart> Parts);
