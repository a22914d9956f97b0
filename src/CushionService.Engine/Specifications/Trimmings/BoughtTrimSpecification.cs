using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>A bought trim, by length: lip cord, fringe or gimp.</summary>
/// <param name="At">The seams that it follows.</param>
/// <param name="Trim">Which.</param>
/// <param name="Attached">How it is fastened.</param>
/// <param name="Size">Diameter of a lip cord, how far a fringe hangs, width of a gimp; above zero.</param>
public sealed record BoughtTrimSpecification(ImmutableArray<EdgingPlace> At, EdgingKind Trim, TrimAttachment Attached, Length Size)
    : EdgingSpecification(At)
{
    /// <inheritdoc />
    public override EdgingKind Kind => Trim;

    /// <inheritdoc />
    public override bool IsCaught => Attached == TrimAttachment.SewnIn;
}
