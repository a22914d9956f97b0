using System.Collections.Immutable;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Instructions;

/// <summary>Parts that become one before they are sewn to the rest of the cover: a face, the boxing, a section.</summary>
/// <param name="Kind">What they become.</param>
/// <param name="Parts">The parts, in the pattern's order; at least one.</param>
internal sealed record CoverUnit(CoverUnitKind Kind, ImmutableArray<PartName> Parts)
{
    /// <summary>The part that names the unit in states.</summary>
    public PartName Name => Parts[0];

    /// <summary>Whether it is a face.</summary>
    public bool IsFace => Kind is CoverUnitKind.Top or CoverUnitKind.Bottom;

    /// <summary>The unit in words: a single part that was joined from panels is named as the whole that it is by then.</summary>
    public Message Words => StepTexts.Unit(Kind, CoverSeams.Base(Name), Name.IsInner && Kind != CoverUnitKind.Single);

    /// <summary>Whether it has a part.</summary>
    /// <param name="part">A part of the pattern as it is cut: one panel of a joined strip, or half of a divided
    /// face.</param>
    public bool Has(PartName part) => Parts.Contains(part);

    /// <summary>Something done to it.</summary>
    /// <param name="kind">What was done.</param>
    public State Is(StateKind kind) => new(kind, Name);
}
