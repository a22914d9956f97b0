using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Fillings;

/// <summary>A ready-made form as an order asks for it.</summary>
/// <param name="Stock">The stock that it names; null where the size, or else the rule of the trade, chooses.</param>
/// <param name="Width">Its width; null where the order does not say.</param>
/// <param name="Depth">Its depth; null where the order does not say.</param>
/// <param name="Thickness">Its thickness; null where it has none, or the order does not say.</param>
public sealed record FormSpecification(string? Stock, Length? Width, Length? Depth, Length? Thickness);
