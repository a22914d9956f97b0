namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>How far the boxing carries the pattern of the face on.</summary>
public enum BoxingMatch
{
    /// <summary>Over the front edge.</summary>
    Front,

    /// <summary>Over every edge that the repeat allows; opposite sides are cut on one phase.</summary>
    AllRound,

    /// <summary>Nowhere: the boxing is cut wherever it lies best.</summary>
    Free,
}
