using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>A narrow strip of fabric folded into a seam, round a cord or flat. The strips of several cushions are cut together.</summary>
/// <param name="At">The seams that it is in.</param>
/// <param name="Cut">How its strips lie on the fabric.</param>
public abstract record SeamStripSpecification(ImmutableArray<EdgingPlace> At, WeltCut Cut) : EdgingSpecification(At)
{
    /// <summary>Whether the cut is the usual one, because the order names none.</summary>
    public bool IsCutUsual { get; init; }

    /// <summary>Diameter of its cord, or how far it shows without one; above zero.</summary>
    public abstract Length Size { get; }

    /// <summary>Width of the strip before it is rounded up to the cutting step.</summary>
    /// <param name="seam">Seam allowance.</param>
    public abstract Length Width(Length seam);
}
