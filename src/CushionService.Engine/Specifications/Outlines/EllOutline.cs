using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>A rectangle without its right back corner, or its left one: P = 2(W + D) (general geometry).</summary>
/// <param name="Width">From left to right over all.</param>
/// <param name="Depth">From front to back over all.</param>
/// <param name="NotchWidth">Width of the missing corner, above zero and below the width.</param>
/// <param name="NotchDepth">Depth of the missing corner, above zero and below the depth.</param>
/// <param name="NotchAt">The side of the missing corner: right or left.</param>
public sealed record EllOutline(Length Width, Length Depth, Length NotchWidth, Length NotchDepth, Side NotchAt) : Outline
{
    /// <inheritdoc />
    public override OutlineKind Kind => OutlineKind.Ell;

    /// <inheritdoc />
    public override Length Width { get; } = Width;

    /// <inheritdoc />
    public override Length Depth { get; } = Depth;

    /// <inheritdoc />
    public override bool IsSymmetric => false;

    /// <inheritdoc />
    public override IEnumerable<OutlineFault> Faults() =>
        AtMost(
            (nameof(NotchWidth), NotchWidth, Width - NarrowestLimb, OutlineTexts.NotchWidth),
            (nameof(NotchDepth), NotchDepth, Depth - NarrowestLimb, OutlineTexts.NotchDepth)
        );

    /// <inheritdoc />
    protected override ImmutableArray<OutlineSide> Draw()
    {
        Length stepX = Width - NotchWidth,
            stepY = Depth - NotchDepth;
        ImmutableArray<OutlineSide> right =
        [
            new(EdgeName.Front, Side.Front, At(Length.Zero, Length.Zero), At(Width, Length.Zero)),
            new(EdgeName.Right, Side.Right, At(Width, Length.Zero), At(Width, stepY)),
            new(new EdgeName(EdgeWord.Step), Side.Right, At(Width, stepY), At(stepX, stepY)),
            new(EdgeName.Inner, Side.Right, At(stepX, stepY), At(stepX, Depth)),
            new(EdgeName.Back, Side.Back, At(stepX, Depth), At(Length.Zero, Depth)),
            new(EdgeName.Left, Side.Left, At(Length.Zero, Depth), At(Length.Zero, Length.Zero)),
        ];
        if (NotchAt != Side.Left)
        {
            return right;
        }

        IEnumerable<OutlineSide> mirrored = right
            .Reverse()
            .Select(side => side.Mirrored(Width))
            .Select(side =>
                side.Name.Last switch
                {
                    EdgeWord.Left => side with { Name = EdgeName.Right, Side = Side.Right },
                    EdgeWord.Right => side with { Name = EdgeName.Left, Side = Side.Left },
                    EdgeWord.Step or EdgeWord.Inner => side with { Side = Side.Left },
                    _ => side,
                }
            );
        return [.. mirrored.TakeLast(1), .. mirrored.SkipLast(1)];
    }
}
