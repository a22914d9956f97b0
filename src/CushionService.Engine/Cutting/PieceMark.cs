using CushionService.Engine.Geometry;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Cutting;

/// <summary>A mark on a cut piece, from its lower left corner.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="From">Where it is, or where its line starts.</param>
/// <param name="To">Where its line ends; null for a point.</param>
/// <param name="Because">What it is for, with its distances.</param>
public sealed record PieceMark(MarkKind Kind, Point From, Point? To, Message Because);
