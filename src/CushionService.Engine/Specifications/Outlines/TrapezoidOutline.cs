using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>Front and back of different widths, as in a bay; it may lean to one side.</summary>
/// <param name="FrontWidth">Above zero.</param>
/// <param name="BackWidth">Above zero.</param>
/// <param name="Depth">From front to back, above zero.</param>
/// <param name="BackOffset">How far the back's left corner lies right of the front's; negative when it lies left of it.</param>
public sealed record TrapezoidOutline(Length FrontWidth, Length BackWidth, Length Depth, Length BackOffset) : Outline
{
    /// <inheritdoc />
    public override OutlineKind Kind => OutlineKind.Trapezoid;

    /// <inheritdoc />
    public override Length Width => Length.Max(FrontWidth, BackOffset + BackWidth) - Left;

    /// <inheritdoc />
    public override Length Depth { get; } = Depth;

    /// <inheritdoc />
    public override bool IsSymmetric => Math.Abs((2 * BackOffset + BackWidth - FrontWidth).Nanometres) <= 1;

    private Length Left => Length.Min(Length.Zero, BackOffset);

    /// <summary>The offset of a trapezoid that does not lean.</summary>
    public static Length Centred(Length frontWidth, Length backWidth) => Length.FromNanometres((frontWidth - backWidth).Nanometres / 2);

    /// <inheritdoc />
    protected override ImmutableArray<OutlineSide> Draw()
    {
        Point frontLeft = At(-Left, Length.Zero),
            frontRight = At(FrontWidth - Left, Length.Zero);
        Point backRight = At(BackOffset + BackWidth - Left, Depth),
            backLeft = At(BackOffset - Left, Depth);
        return
        [
            new(EdgeName.Front, Side.Front, frontLeft, frontRight),
            new(EdgeName.Right, Side.Right, frontRight, backRight),
            new(EdgeName.Back, Side.Back, backRight, backLeft),
            new(EdgeName.Left, Side.Left, backLeft, frontLeft),
        ];
    }
}
