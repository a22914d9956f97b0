using CushionService.Engine.Geometry;

namespace CushionService.Engine.Patterns.Panels;

/// <summary>A mark on a panel, in the panel's own coordinates.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="From">Where it is, or where its line starts.</param>
/// <param name="To">Where its line ends; null for a point.</param>
/// <param name="Purpose">What it is for.</param>
public sealed record PanelMark(MarkKind Kind, Point From, Point? To, MarkPurpose Purpose);
