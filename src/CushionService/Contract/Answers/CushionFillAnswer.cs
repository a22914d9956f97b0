using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Contract.Answers;

/// <summary>What fills one cushion.</summary>
public sealed record CushionFillAnswer
{
    /// <summary>The kind of fill.</summary>
    public required FillKind Kind { get; init; }

    /// <summary>The item that is bought, as materials and prices name it.</summary>
    public required string Stock { get; init; }

    /// <summary>The outline that foam is sawn to; null for another fill.</summary>
    public OutlineKind? Shape { get; init; }

    /// <summary>Extent of the foam, oversize included, or of the form; null for another fill.</summary>
    public MaterialSizeAnswer? Size { get; init; }

    /// <summary>The layers of foam from top to bottom, a crown after the uppermost; empty where the foam is one block.</summary>
    public IReadOnlyList<FoamLayerAnswer> Layers { get; init; } = [];
}
