using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Cutting;

/// <summary>Says in one line how the size of a cut piece comes about: "44 in + 2 × 1/2 in seam by 18 in + 2 × 1/2 in seam".</summary>
public static class Derivation
{
    /// <summary>The line for a piece.</summary>
    /// <param name="piece">A cut piece.</param>
    /// <returns>One line without an end mark; for a piece of the maker's own, only its size.</returns>
    public static Message Of(CutPiece piece) =>
        piece.Panel is { } panel
            ? SizeTexts.Cut(panel.Because, Side(piece.WidthTerms), Side(piece.LengthTerms))
            : SizeTexts.AsOrdered(piece.Width, piece.Length);

    // One side: finished size, take-up, the allowance at either edge, and last what rounding adds or takes off.
    private static Message Side(in CutSize size) =>
        SizeTexts.Side(
            size.Layers,
            // Said of one layer, as a tape would measure the finished part.
            Length.FromNanometres(size.Finished.Nanometres / size.Layers),
            size.TakeUp > Length.Zero ? size.TakeUp : null,
            size.First == size.Second
                ? Allowance(size.First, 2 * size.First.Turns)
                : [.. Allowance(size.First, size.First.Turns), .. Allowance(size.Second, size.Second.Turns)],
            size.Rest != Length.Zero ? size.Cut : null,
            size.Rest > Length.Zero,
            size.IsTemplate && size.Rest > Length.Zero ? size.Rest : null
        );

    // Edges without an allowance, such as folds, are not mentioned.
    private static Message[] Allowance(EdgeFinish finish, int times) =>
        times > 0 && finish.Depth > Length.Zero ? [SizeTexts.Allowance(times, finish.Depth, finish.Kind)] : [];
}
