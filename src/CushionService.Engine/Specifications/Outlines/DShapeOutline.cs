using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>A rectangle with half a circle before it, its straight side at the back: P = W + 2k + πW/2 with k = D − W/2 (general
/// geometry).</summary>
/// <param name="Width">From left to right, above zero.</param>
/// <param name="Depth">From front to back, more than half the width.</param>
public sealed record DShapeOutline(Length Width, Length Depth) : Outline
{
    /// <inheritdoc />
    public override OutlineKind Kind => OutlineKind.DShape;

    /// <inheritdoc />
    public override Length Width { get; } = Width;

    /// <inheritdoc />
    public override Length Depth { get; } = Depth;

    /// <inheritdoc />
    public override IEnumerable<OutlineFault> Faults() => Below((nameof(Width), Width, 2 * Depth, OutlineTexts.WidthToDepth));

    /// <inheritdoc />
    protected override ImmutableArray<OutlineSide> Draw()
    {
        const double quarter = Math.PI / 2;
        Length radius = Width.HalfUp();
        Point left = At(Length.Zero, radius),
            front = At(radius, Length.Zero),
            right = At(Width, radius);
        return
        [
            new(EdgeName.Front, Side.Front, [new Segment(left, front, quarter), new Segment(front, right, quarter)]),
            new(EdgeName.Right, Side.Right, right, At(Width, Depth)),
            new(EdgeName.Back, Side.Back, At(Width, Depth), At(Length.Zero, Depth)),
            new(EdgeName.Left, Side.Left, At(Length.Zero, Depth), left),
        ];
    }
}
