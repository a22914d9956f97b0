using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>A rectangle with round corners: P = 2(W + D) − (8 − 2π) r (general geometry).</summary>
/// <param name="Width">From left to right, more than two radii.</param>
/// <param name="Depth">From front to back, more than two radii.</param>
/// <param name="CornerRadius">Above zero.</param>
public sealed record RoundedRectangleOutline(Length Width, Length Depth, Length CornerRadius) : Outline
{
    /// <inheritdoc />
    public override OutlineKind Kind => OutlineKind.RoundedRectangle;

    /// <inheritdoc />
    public override Length Width { get; } = Width;

    /// <inheritdoc />
    public override Length Depth { get; } = Depth;

    /// <inheritdoc />
    public override IEnumerable<OutlineFault> Faults() =>
        Below(
            (nameof(CornerRadius), CornerRadius, Half(Width), OutlineTexts.CornerRadiusToHalfWidth),
            (nameof(CornerRadius), CornerRadius, Half(Depth), OutlineTexts.CornerRadiusToHalfDepth)
        );

    /// <inheritdoc />
    protected override ImmutableArray<OutlineSide> Draw()
    {
        const double quarter = Math.PI / 2;
        Length near = CornerRadius,
            farX = Width - near,
            farY = Depth - near;
        return
        [
            new(EdgeName.Front, Side.Front, At(near, Length.Zero), At(farX, Length.Zero)),
            new(
                EdgeName.Right,
                Side.Right,
                [
                    new Segment(At(farX, Length.Zero), At(Width, near), quarter),
                    new Segment(At(Width, near), At(Width, farY)),
                    new Segment(At(Width, farY), At(farX, Depth), quarter),
                ]
            ),
            new(EdgeName.Back, Side.Back, At(farX, Depth), At(near, Depth)),
            new(
                EdgeName.Left,
                Side.Left,
                [
                    new Segment(At(near, Depth), At(Length.Zero, farY), quarter),
                    new Segment(At(Length.Zero, farY), At(Length.Zero, near)),
                    new Segment(At(Length.Zero, near), At(near, Length.Zero), quarter),
                ]
            ),
        ];
    }
}
