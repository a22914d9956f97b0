using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>A rectangle without the middle of its back: P = 2(W + D) + 2 × notch depth (general geometry).</summary>
/// <param name="Width">From left to right, more than the notch.</param>
/// <param name="Depth">From front to back, more than the notch.</param>
/// <param name="NotchWidth">Above zero.</param>
/// <param name="NotchDepth">Above zero.</param>
public sealed record UOutline(Length Width, Length Depth, Length NotchWidth, Length NotchDepth) : Outline
{
    /// <inheritdoc />
    public override OutlineKind Kind => OutlineKind.U;

    /// <inheritdoc />
    public override Length Width { get; } = Width;

    /// <inheritdoc />
    public override Length Depth { get; } = Depth;

    /// <inheritdoc />
    public override IEnumerable<OutlineFault> Faults() =>
        AtMost(
            (nameof(NotchWidth), NotchWidth, Width - 2 * NarrowestLimb, OutlineTexts.NotchWidth),
            (nameof(NotchDepth), NotchDepth, Depth - NarrowestLimb, OutlineTexts.NotchDepth)
        );

    /// <inheritdoc />
    protected override ImmutableArray<OutlineSide> Draw()
    {
        Length left = Length.FromNanometres((Width - NotchWidth).Nanometres / 2),
            right = left + NotchWidth,
            floor = Depth - NotchDepth;
        return
        [
            new(EdgeName.Front, Side.Front, At(Length.Zero, Length.Zero), At(Width, Length.Zero)),
            new(EdgeName.Right, Side.Right, At(Width, Length.Zero), At(Width, Depth)),
            new(EdgeName.Right.With(EdgeWord.End), Side.Right, At(Width, Depth), At(right, Depth)),
            new(EdgeName.Right.With(EdgeWord.Inner), Side.Right, At(right, Depth), At(right, floor)),
            new(EdgeName.Back, Side.Back, At(right, floor), At(left, floor)),
            new(EdgeName.Left.With(EdgeWord.Inner), Side.Left, At(left, floor), At(left, Depth)),
            new(EdgeName.Left.With(EdgeWord.End), Side.Left, At(left, Depth), At(Length.Zero, Depth)),
            new(EdgeName.Left, Side.Left, At(Length.Zero, Depth), At(Length.Zero, Length.Zero)),
        ];
    }
}
