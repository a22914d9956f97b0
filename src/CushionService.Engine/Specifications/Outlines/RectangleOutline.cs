using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>A rectangle.</summary>
/// <param name="Width">From left to right, above zero.</param>
/// <param name="Depth">From front to back, above zero.</param>
public sealed record RectangleOutline(Length Width, Length Depth) : Outline
{
    /// <inheritdoc />
    public override OutlineKind Kind => OutlineKind.Rectangle;

    /// <inheritdoc />
    public override Length Width { get; } = Width;

    /// <inheritdoc />
    public override Length Depth { get; } = Depth;

    /// <inheritdoc />
    protected override ImmutableArray<OutlineSide> Draw() =>
        [
            new(EdgeName.Front, Side.Front, At(Length.Zero, Length.Zero), At(Width, Length.Zero)),
            new(EdgeName.Right, Side.Right, At(Width, Length.Zero), At(Width, Depth)),
            new(EdgeName.Back, Side.Back, At(Width, Depth), At(Length.Zero, Depth)),
            new(EdgeName.Left, Side.Left, At(Length.Zero, Depth), At(Length.Zero, Length.Zero)),
        ];
}
