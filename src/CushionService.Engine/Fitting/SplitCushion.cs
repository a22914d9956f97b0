using System.Collections.Immutable;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Fitting;

/// <summary>A cushion whose pieces come from several dye lots.</summary>
/// <param name="Cushion">The cushion.</param>
/// <param name="Lots">The lots, at least two.</param>
public sealed record SplitCushion(CushionSpecification Cushion, ImmutableArray<string> Lots)
{
    /// <summary>Says so.</summary>
    /// <param name="fabric">What the order calls the fabric.</param>
    /// <returns>A warning, which does not stop the cut: the maker may find the lots close enough.</returns>
    public Violation Said(string fabric) =>
        new Violation(Cushion.Pointer, "several-lots", FitTexts.SeveralLots(Cushion.Name, fabric, Lots));
}
