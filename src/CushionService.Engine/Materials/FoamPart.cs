using CushionService.Engine.Measures;

namespace CushionService.Engine.Materials;

/// <summary>Parts of one size that a base of foam is glued from.</summary>
/// <param name="Width">Extent of one, left to right on the cushion.</param>
/// <param name="Depth">Extent of one, front to back on the cushion.</param>
/// <param name="Count">How many, at least 1.</param>
public readonly record struct FoamPart(Length Width, Length Depth, int Count);
