using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Closures;

/// <summary>Two hemmed flaps that overlap, held by nothing.</summary>
/// <param name="Side">Where it stands.</param>
/// <param name="Fold">Depth of each turn of the flaps' double-folded hems.</param>
/// <param name="Overlap">How far the flaps overlap.</param>
public sealed record EnvelopeClosure(Side Side, Length Fold, Length Overlap) : OverlappingClosure(Side, Length.Zero, Fold, Overlap)
{
    /// <inheritdoc />
    public override ClosureKind Kind => ClosureKind.Envelope;

    /// <summary>The overlap when none is given: 3 in up to 14 in across, 4 in up to 18 in, 5 in above (common practice, no
    /// source).</summary>
    /// <param name="across">Finished size across the overlap.</param>
    public static Length UsualOverlap(Length across) =>
        Length.FromInches(
            across <= Length.FromInches(14) ? 3
            : across <= Length.FromInches(18) ? 4
            : 5
        );
}
