using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Closures;

/// <summary>Two hemmed strips or flaps that overlap, held by hook-and-loop tape.</summary>
/// <param name="Side">Where it is.</param>
/// <param name="Return">How far its section runs round each corner.</param>
/// <param name="Fold">Depth of each turn of the double-folded hems.</param>
/// <param name="Overlap">How far they overlap.</param>
/// <param name="TapeWidth">Width of the tape.</param>
public sealed record HookAndLoopClosure(Side Side, Length Return, Length Fold, Length Overlap, Length TapeWidth)
    : OverlappingClosure(Side, Return, Fold, Overlap)
{
    /// <inheritdoc />
    public override ClosureKind Kind => ClosureKind.HookAndLoop;

    /// <summary>The narrowest overlap that holds a tape: its width and a margin at each edge.</summary>
    public static Length NarrowestOverlap(Length tapeWidth, Length margin) => tapeWidth + 2 * margin;

    /// <summary>The overlap that is left when both strips are cut as high as the other sides: H + 2s − 4f.</summary>
    /// <param name="height">Finished height of the boxing, H.</param>
    /// <param name="seam">Seam allowance, s.</param>
    /// <param name="fold">Depth of each turn of the hem, f.</param>
    /// <remarks>Follows from each strip being cut (H + 2s + o)/2 + 2f high. At or below zero the strips do not meet.</remarks>
    public static Length OverlapAsSides(Length height, Length seam, Length fold) => height + 2 * seam - 4 * fold;
}
