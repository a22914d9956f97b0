namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>How the motif lies on the underside of a cushion.</summary>
public enum UndersideMatch
{
    /// <summary>As on the top, so that the cushion can be turned over.</summary>
    AsTop,

    /// <summary>The underside is cut wherever it lies best.</summary>
    Free,
}
