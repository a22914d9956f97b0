using CushionService.Engine.Measures;

namespace CushionService.Engine.Materials;

/// <summary>The sizes of one piece of a material that has them.</summary>
/// <param name="Width">Of a sheet, a roll, a tape or a block; diameter of a button.</param>
/// <param name="Depth">Of a sheet or a block.</param>
/// <param name="Thickness">Of a sheet, a block or batting; diameter of a cord.</param>
public sealed record MaterialSize(Length? Width, Length? Depth, Length? Thickness);
