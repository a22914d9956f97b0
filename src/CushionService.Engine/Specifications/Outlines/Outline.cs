using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>The finished outline of a face, on the seam line, from (0, 0) to (<see cref="Width"/>, <see cref="Depth"/>); front at the
/// bottom.</summary>
public abstract record Outline
{
    // Less is a bend that needs no clip: about 11 degrees.
    private const double LeastTurn = 0.2;

    private ImmutableArray<OutlineSide> _sides;

    /// <summary>The kind of outline.</summary>
    public abstract OutlineKind Kind { get; }

    /// <summary>Extent from left to right.</summary>
    public abstract Length Width { get; }

    /// <summary>Extent from front to back.</summary>
    public abstract Length Depth { get; }

    /// <summary>Its sides, counter-clockwise from the front. A curve is split where it reaches furthest left, right, front or
    /// back.</summary>
    public ImmutableArray<OutlineSide> Sides => _sides.IsDefault ? _sides = Draw() : _sides;

    /// <summary>Finished length all round.</summary>
    public Length Perimeter => Sides.Aggregate(Length.Zero, (sum, side) => sum + side.Length);

    /// <summary>Whether every side is straight, so that a boxing can be joined at the corners.</summary>
    public bool HasCorners => Sides.All(side => side.IsStraight);

    /// <summary>Whether the seam line turns at inward corners.</summary>
    public bool HasInsideCorners => Turns.Any(turn => turn < -LeastTurn);

    /// <summary>Whether the seam line turns at outward corners.</summary>
    public bool HasOutsideCorners => Turns.Any(turn => turn > LeastTurn);

    /// <summary>Whether it looks the same from below, so that top and bottom are cut the same.</summary>
    public virtual bool IsSymmetric => true;

    /// <summary>Area inside the seam line, by the shoelace formula and the circle's segments (general geometry), to the square
    /// nanometre.</summary>
    public Area Area
    {
        get
        {
            ImmutableArray<Segment> path = [.. Sides.SelectMany(side => side.Path)];
            double bulges = path.Sum(segment =>
                segment.IsStraight ? 0 : segment.Radius * segment.Radius * (segment.Sweep - Math.Sin(segment.Sweep)) / 2
            );
            return Polygon.Area([.. path.Select(segment => segment.From)]) + new Area((Int128)Math.Round(bulges));
        }
    }

    /// <summary>What keeps it from being a shape; nothing when it can be drawn.</summary>
    public virtual IEnumerable<OutlineFault> Faults() => [];

    /// <summary>Stretches of this outline as they are cut for the bottom: mirrored, unless top and bottom are cut the same.</summary>
    /// <param name="stretches">Counter-clockwise from above, end to end.</param>
    public ImmutableArray<OutlineSide> FromBelow(ImmutableArray<OutlineSide> stretches) =>
        IsSymmetric ? stretches : [.. stretches.Reverse().Select(stretch => stretch.Mirrored(Width))];

    /// <summary>Draws the sides, counter-clockwise from the front left.</summary>
    protected abstract ImmutableArray<OutlineSide> Draw();

    /// <summary>The least width of what a notch or an ear leaves, so that it can be sewn and filled.</summary>
    /// <remarks>Common practice, no source.</remarks>
    protected static Length NarrowestLimb { get; } = Length.FromInches(1);

    /// <summary>A fault for each size that is above its limit.</summary>
    protected static IEnumerable<OutlineFault> AtMost(
        params IEnumerable<(string Field, Length Size, Length Limit, Func<Length, Message> Detail)> rules
    ) => rules.Where(rule => rule.Size > rule.Limit).Select(rule => new OutlineFault(rule.Field, rule.Limit, rule.Detail(rule.Limit)));

    /// <summary>A fault for each size that is not below its limit.</summary>
    protected static IEnumerable<OutlineFault> Below(
        params IEnumerable<(string Field, Length Size, Length Limit, Func<Length, Message> Detail)> rules
    ) => rules.Where(rule => rule.Size >= rule.Limit).Select(rule => new OutlineFault(rule.Field, rule.Limit, rule.Detail(rule.Limit)));

    // How far the seam line turns from each line or arc to the next: to the left is outward. The outline runs counter-clockwise, and the
    // remainder keeps a turn between half a circle to either side.
    private IEnumerable<double> Turns
    {
        get
        {
            Segment[] path = [.. Sides.SelectMany(side => side.Path)];
            return path.Select(
                (segment, i) => Math.IEEERemainder(path[(i + 1) % path.Length].StartDirection - segment.EndDirection, 2 * Math.PI)
            );
        }
    }

    /// <summary>Half a length, rounded down to a nanometre.</summary>
    protected static Length Half(Length length) => Length.FromNanometres(length.Nanometres / 2);

    /// <summary>A point of the outline.</summary>
    protected static Point At(Length x, Length y) => new(x, y);
}
