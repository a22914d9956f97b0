using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>Half a circle, its straight side at the back.</summary>
/// <param name="Width">The straight side, above zero.</param>
public sealed record HalfRoundOutline(Length Width) : Outline
{
    /// <inheritdoc />
    public override OutlineKind Kind => OutlineKind.HalfRound;

    /// <inheritdoc />
    public override Length Width { get; } = Width;

    /// <inheritdoc />
    public override Length Depth => Width.HalfUp();

    /// <inheritdoc />
    protected override ImmutableArray<OutlineSide> Draw()
    {
        const double quarter = Math.PI / 2;
        Point left = At(Length.Zero, Depth),
            front = At(Depth, Length.Zero),
            right = At(Width, Depth);
        return
        [
            new(EdgeName.Front, Side.Front, [new Segment(left, front, quarter), new Segment(front, right, quarter)]),
            new(EdgeName.Back, Side.Back, right, left),
        ];
    }
}
