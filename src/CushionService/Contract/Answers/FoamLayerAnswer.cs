namespace CushionService.Contract.Answers;

/// <summary>A layer of foam in a cushion.</summary>
public sealed record FoamLayerAnswer
{
    /// <summary>The item that is bought, as materials and prices name it.</summary>
    public required string Stock { get; init; }

    /// <summary>Extent of the layer, oversize included.</summary>
    public required MaterialSizeAnswer Size { get; init; }

    /// <summary>Whether it is the crown.</summary>
    public required bool Crown { get; init; }
}
