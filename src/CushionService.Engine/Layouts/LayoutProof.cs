using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Nesting;

namespace CushionService.Engine.Layouts;

/// <summary>Why no layout could be sold shorter, in figures that a caller can check: lengths and areas of the order.</summary>
/// <param name="Kind">The argument.</param>
/// <param name="Length">The length that no layout can beat.</param>
/// <param name="Width">The usable width that it is proven for.</param>
/// <param name="Area">The area of all pieces; null where the proof does not rest on it.</param>
public sealed record LayoutProof(ProofKind Kind, Length Length, Length Width, Area? Area)
{
    // The kernels count on whole micrometres at the finest.
    private const long Micrometre = 1000;

    /// <summary>The proof of a layout; null where nothing is proven.</summary>
    /// <param name="layout">A layout.</param>
    /// <remarks>A bound by area may owe its last step to one long piece; then the piece is the argument, since the area alone would not
    /// check.</remarks>
    /// <exception cref="ArgumentNullException">There is no layout.</exception>
    public static LayoutProof? Of(FabricLayout layout)
    {
        ArgumentNullException.ThrowIfNull(layout);
        if (layout.Proof == ProofKind.None)
        {
            return null;
        }

        (Length length, Length width) = (layout.LowerBound, layout.Fabric.UsableWidth);
        ProofKind kind = layout.Proof == ProofKind.Area && !Fills(layout.Covered, length, width) ? ProofKind.LongestPiece : layout.Proof;
        return new LayoutProof(kind, length, width, kind == ProofKind.Area ? layout.Covered : null);
    }

    /// <summary>The proof in a sentence.</summary>
    public Message Because =>
        Kind switch
        {
            ProofKind.Area => YardageTexts.ProvenByArea(Area!.Value, Width, Length),
            ProofKind.LongestPiece => YardageTexts.ProvenByLongestPiece(Length),
            ProofKind.DualFeasible => YardageTexts.ProvenByCrowding(Width, Length),
            ProofKind.Relaxation => YardageTexts.ProvenByEasierProblem(Length, Width),
            _ => YardageTexts.ProvenByTrial(Width, Length),
        };

    // Whether the area alone asks for the length, to the kernels' rounding.
    private static bool Fills(Area covered, Length length, Length width) =>
        covered.SquareNanometres > (Int128)(length.Nanometres - Micrometre) * width.Nanometres - (Int128)Micrometre * length.Nanometres;
}
