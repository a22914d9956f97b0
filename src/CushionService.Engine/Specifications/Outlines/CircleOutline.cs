using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>A circle. Its back half belongs to the back, so that a closure there opens half the way round (40 to 50 % of the circumference
/// for firm foam: common practice, no source).</summary>
/// <param name="Diameter">Above zero.</param>
public sealed record CircleOutline(Length Diameter) : Outline
{
    /// <inheritdoc />
    public override OutlineKind Kind => OutlineKind.Circle;

    /// <inheritdoc />
    public override Length Width => Diameter;

    /// <inheritdoc />
    public override Length Depth => Diameter;

    /// <inheritdoc />
    protected override ImmutableArray<OutlineSide> Draw()
    {
        Length radius = Diameter.HalfUp();
        (Point front, Point right) = (At(radius, Length.Zero), At(Diameter, radius));
        (Point back, Point left) = (At(radius, Diameter), At(Length.Zero, radius));
        const double quarter = Math.PI / 2;
        return
        [
            new(EdgeName.Front, Side.Front, [new Segment(left, front, quarter), new Segment(front, right, quarter)]),
            new(EdgeName.Back, Side.Back, [new Segment(right, back, quarter), new Segment(back, left, quarter)]),
        ];
    }
}
