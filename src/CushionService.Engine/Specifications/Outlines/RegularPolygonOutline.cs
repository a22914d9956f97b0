using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>A polygon with equal sides and angles, one side at the front.</summary>
/// <param name="SideCount">From 3 to 24.</param>
/// <param name="SideLength">Above zero.</param>
/// <exception cref="ArgumentOutOfRangeException">There are fewer than 3 or more than 24 sides.</exception>
public sealed record RegularPolygonOutline(int SideCount, Length SideLength) : Outline
{
    private readonly PolygonOutline _polygon = new(Corners(SideCount, SideLength), Length.Zero);

    /// <inheritdoc />
    public override OutlineKind Kind => OutlineKind.RegularPolygon;

    /// <inheritdoc />
    public override Length Width => _polygon.Width;

    /// <inheritdoc />
    public override Length Depth => _polygon.Depth;

    /// <inheritdoc />
    protected override ImmutableArray<OutlineSide> Draw() => _polygon.Sides;

    private static ImmutableArray<Point> Corners(int count, Length side)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 3);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, 24);
        double radius = side.Nanometres / (2 * Math.Sin(Math.PI / count));
        return
        [
            .. Enumerable
                .Range(0, count)
                .Select(i =>
                {
                    double angle = (-Math.PI / 2) - (Math.PI / count) + (2 * Math.PI * i / count);
                    return At(
                        Length.FromNanometres((long)Math.Round(radius * Math.Cos(angle))),
                        Length.FromNanometres((long)Math.Round(radius * Math.Sin(angle)))
                    );
                }),
        ];
    }
}
