namespace CushionService.Engine.Costing;

/// <summary>By what an addition is shared among the cushions of an order.</summary>
public enum CostBasis
{
    /// <summary>By all that each has been allotted before it.</summary>
    All,

    /// <summary>By the materials of each.</summary>
    Materials,

    /// <summary>By the fabric of each.</summary>
    Fabric,

    /// <summary>By the labour of each.</summary>
    Labour,

    /// <summary>By how many are made.</summary>
    Cushions,
}
