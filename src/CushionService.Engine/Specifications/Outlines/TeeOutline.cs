using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>A rectangle with an ear at each front corner, which lies before the arms of a chair: P = 2(W + D) (general geometry).</summary>
/// <param name="Width">From ear to ear, more than two ears.</param>
/// <param name="Depth">From front to back, more than an ear's depth.</param>
/// <param name="EarWidth">How far each ear extends, above zero.</param>
/// <param name="EarDepth">From the front to the back of an ear, above zero.</param>
public sealed record TeeOutline(Length Width, Length Depth, Length EarWidth, Length EarDepth) : Outline
{
    /// <inheritdoc />
    public override OutlineKind Kind => OutlineKind.Tee;

    /// <inheritdoc />
    public override Length Width { get; } = Width;

    /// <inheritdoc />
    public override Length Depth { get; } = Depth;

    /// <inheritdoc />
    public override IEnumerable<OutlineFault> Faults() =>
        AtMost(
            (nameof(EarWidth), EarWidth, Half(Width - NarrowestLimb), OutlineTexts.EarWidth),
            (nameof(EarDepth), EarDepth, Depth - NarrowestLimb, OutlineTexts.EarDepth)
        );

    /// <inheritdoc />
    protected override ImmutableArray<OutlineSide> Draw()
    {
        Length right = Width - EarWidth;
        return
        [
            new(EdgeName.Front, Side.Front, At(Length.Zero, Length.Zero), At(Width, Length.Zero)),
            new(EdgeName.Right.With(EdgeWord.Ear), Side.Right, At(Width, Length.Zero), At(Width, EarDepth)),
            new(EdgeName.Right.With(EdgeWord.Step), Side.Right, At(Width, EarDepth), At(right, EarDepth)),
            new(EdgeName.Right, Side.Right, At(right, EarDepth), At(right, Depth)),
            new(EdgeName.Back, Side.Back, At(right, Depth), At(EarWidth, Depth)),
            new(EdgeName.Left, Side.Left, At(EarWidth, Depth), At(EarWidth, EarDepth)),
            new(EdgeName.Left.With(EdgeWord.Step), Side.Left, At(EarWidth, EarDepth), At(Length.Zero, EarDepth)),
            new(EdgeName.Left.With(EdgeWord.Ear), Side.Left, At(Length.Zero, EarDepth), At(Length.Zero, Length.Zero)),
        ];
    }
}
