namespace CushionService.Engine.Specifications;

/// <summary>How a cushion is built.</summary>
public enum Construction
{
    /// <summary>Two faces joined by a boxing as high as the cushion is thick.</summary>
    Boxed,

    /// <summary>Two faces sewn to each other at the edge.</summary>
    KnifeEdge,
}
