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

    /// <summary>Whether it is on the part of its panel between two plumb lines; a point or a plumb line on the first of them is, and a
    /// line that crosses either is on both sides of it.</summary>
    /// <param name="from">The left line.</param>
    /// <param name="to">The right line; beyond the panel's right edge for the last part.</param>
    public bool IsWithin(Length from, Length to) =>
        To is { } end && end.X != From.X
            ? Length.Max(From.X, end.X) > from && Length.Min(From.X, end.X) < to
            : From.X >= from && From.X < to;

    /// <summary>The mark on that part; a line that crosses either line ends there.</summary>
    /// <param name="from">The left line.</param>
    /// <param name="to">The right line.</param>
    public PanelMark Within(Length from, Length to)
    {
        if (To is not { } end || end.X == From.X)
        {
            return this;
        }

        var line = new Segment(From, end);
        Point Between(Point point)
        {
            Length x = Length.Min(Length.Max(point.X, from), to);
            return x == point.X ? point
                : IsLevel ? point with { X = x }
                : line.At((double)(x - From.X).Nanometres / (end.X - From.X).Nanometres) with { X = x };
        }

        return this with
        {
            From = Between(From),
            To = Between(end),
        };
    }
}
