using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>A handle by its finished sizes.</summary>
/// <param name="Kind">What it is made of.</param>
/// <param name="Side">The side of the boxing that it is on.</param>
/// <param name="Width">Finished width.</param>
/// <param name="Length">Finished length.</param>
/// <param name="Span">Distance between its sewn ends; shorter than the length.</param>
public sealed record HandleSpecification(HandleKind Kind, Side Side, Length Width, Length Length, Length Span)
{
    /// <summary>The side that has a second one like it; null for none.</summary>
    public Side? Second { get; init; }

    /// <summary>The sides that have one, each once.</summary>
    public ImmutableArray<Side> Sides => Second is { } second ? [Side, second] : [Side];

    /// <summary>Whether it has a strip of fabric.</summary>
    public bool HasStrap => Kind is not HandleKind.Webbing;

    /// <summary>Whether it has webbing.</summary>
    public bool HasWebbing => Kind is not HandleKind.FoldedStrap;
}
