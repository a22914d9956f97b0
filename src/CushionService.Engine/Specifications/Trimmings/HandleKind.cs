namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>What a handle is made of.</summary>
public enum HandleKind
{
    /// <summary>A strip of fabric folded in four and edge-stitched.</summary>
    FoldedStrap,

    /// <summary>Webbing.</summary>
    Webbing,

    /// <summary>Webbing in a strip of fabric folded in four.</summary>
    StrapAndWebbing,
}
