using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns.Panels;

/// <summary>A mark on a panel, in the panel's own coordinates.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="From">Where it is, or where its line starts.</param>
/// <param name="To">Where its line ends; null for a point.</param>
/// <param name="Purpose">What it is for.</param>
public sealed record PanelMark(MarkKind Kind, Point From, Point? To, MarkPurpose Purpose)
{
    /// <summary>Whether it is a level line, which goes on from part to part of a joined panel.</summary>
    public bool IsLevel => To is { } to && to.Y == From.Y;

    /// <summary>Whether it is on the part of its panel between two plumb lines; a point on the first of them is.</summary>
    /// <param name="from">The left line.</param>
    /// <param name="to">The right line; beyond the panel's right edge for the last part.</param>
    public bool IsWithin(Length from, Length to) =>
        To is { } end && IsLevel ? Length.Max(From.X, end.X) > from && Length.Min(From.X, end.X) < to : From.X >= from && From.X < to;

    /// <summary>The mark on that part; a level line that passes either line ends there.</summary>
    /// <param name="from">The left line.</param>
    /// <param name="to">The right line.</param>
    public PanelMark Within(Length from, Length to)
    {
        Point Between(Point point) => point with { X = Length.Min(Length.Max(point.X, from), to) };
        return To is { } end && IsLevel ? this with { From = Between(From), To = Between(end) } : this;
    }
}
