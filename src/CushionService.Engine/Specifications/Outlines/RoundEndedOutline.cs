using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>A rectangle with half a circle at its left and right ends: P = 2(W − D) + πD (general geometry).</summary>
/// <param name="Width">From left to right over all, more than the depth.</param>
/// <param name="Depth">From front to back, above zero.</param>
public sealed record RoundEndedOutline(Length Width, Length Depth) : Outline
{
    /// <inheritdoc />
    public override OutlineKind Kind => OutlineKind.RoundEnded;

    /// <inheritdoc />
    public override Length Width { get; } = Width;

    /// <inheritdoc />
    public override Length Depth { get; } = Depth;

    /// <inheritdoc />
    public override IEnumerable<OutlineFault> Faults() => Below((nameof(Depth), Depth, Width, OutlineTexts.DepthToWidth));

    /// <inheritdoc />
    protected override ImmutableArray<OutlineSide> Draw()
    {
        const double quarter = Math.PI / 2;
        Length radius = Depth.HalfUp(),
            far = Width - radius;
        return
        [
            new(EdgeName.Front, Side.Front, At(radius, Length.Zero), At(far, Length.Zero)),
            new(
                EdgeName.Right,
                Side.Right,
                [new Segment(At(far, Length.Zero), At(Width, radius), quarter), new Segment(At(Width, radius), At(far, Depth), quarter)]
            ),
            new(EdgeName.Back, Side.Back, At(far, Depth), At(radius, Depth)),
            new(
                EdgeName.Left,
                Side.Left,
                [
                    new Segment(At(radius, Depth), At(Length.Zero, radius), quarter),
                    new Segment(At(Length.Zero, radius), At(radius, Length.Zero), quarter),
                ]
            ),
        ];
    }
}
