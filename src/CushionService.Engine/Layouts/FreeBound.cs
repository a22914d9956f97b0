using CushionService.Engine.Measures;
using CushionService.Nesting;

namespace CushionService.Engine.Layouts;

/// <summary>A length that no layout of a nesting problem can beat.</summary>
/// <param name="Length">The length.</param>
/// <param name="Kind">The argument, where it is known.</param>
/// <param name="Figures">Its figures.</param>
internal readonly record struct FreeBound(Length Length, ProofKind Kind, string Figures)
{
    /// <summary>The bound that a search found.</summary>
    /// <param name="layout">What the search found; a bound that it has not proven minimal is of an easier
    /// problem.</param>
    /// <param name="grid">Its grid.</param>
    public static FreeBound Of(StripLayout layout, Grid grid) =>
        layout.ProvenMinimal
            ? new FreeBound(grid.Back(layout.LowerBound), layout.Proof, layout.ProofFigures)
            : new FreeBound(grid.Back(layout.LowerBound), ProofKind.Relaxation, "nothing that is sold shorter holds the pieces");
}
