using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>A welt: a cord in a wrapped strip.</summary>
/// <param name="At">The seams that it is in.</param>
/// <param name="CordDiameter">Diameter of the cord, above zero.</param>
/// <param name="Cut">How its strips lie on the fabric.</param>
public sealed record WeltSpecification(ImmutableArray<EdgingPlace> At, Length CordDiameter, WeltCut Cut) : SeamStripSpecification(At, Cut)
{
    /// <inheritdoc />
    public override EdgingKind Kind => EdgingKind.Welt;

    /// <inheritdoc />
    public override Length Size => CordDiameter;

    /// <inheritdoc />
    public override Length Width(Length seam) => StripWidth(CordDiameter, seam);

    /// <summary>Width of the strip before it is rounded up to the cutting step: w = πd + 2s (general geometry), outward to the
    /// nanometre.</summary>
    /// <param name="cordDiameter">Diameter of the cord, d.</param>
    /// <param name="seam">Seam allowance, s.</param>
    public static Length StripWidth(Length cordDiameter, Length seam) =>
        Length.FromNanometres((long)Math.Ceiling(Math.PI * cordDiameter.Nanometres)) + 2 * seam;
}
