using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>A plumb or level line across an outline.</summary>
/// <param name="IsPlumb">Whether it runs upwards; else it is level.</param>
/// <param name="At">Where it lies: its x when plumb, its y when level.</param>
internal readonly record struct CrossingLine(bool IsPlumb, Length At)
{
    // In nanometres: less than the micrometre to which corners are rounded.
    private const long Sliver = 1000;

    /// <summary>Its direction, in radians from the x axis.</summary>
    public double Direction => IsPlumb ? Math.PI / 2 : 0;

    /// <summary>Where a point lies across the line: its x when the line is plumb, its y when it is level.</summary>
    public Length Across(Point point) => IsPlumb ? point.X : point.Y;

    /// <summary>How far a point lies beyond the line, in nanometres: to its right or above it.</summary>
    public long Beyond(Point point) => (Across(point) - At).Nanometres;

    /// <summary>The same, but zero for a point that is <see cref="IsAllButOn"/> the line, so that no sliver is parted off.</summary>
    /// <param name="point">An end of a segment, or where an arc turns back.</param>
    public long BeyondOrOn(Point point) => IsAllButOn(point) ? 0 : Beyond(point);

    /// <summary>Whether a point is within a thousandth of a millimetre of the line.</summary>
    public bool IsAllButOn(Point point) => Math.Abs(Beyond(point)) < Sliver;

    /// <summary>The point of the line beside a point.</summary>
    public Point Beside(Point point) => IsPlumb ? point with { X = At } : point with { Y = At };
}
