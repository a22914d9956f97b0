namespace CushionService.Engine.Specifications.Pricing;

/// <summary>How often a fee is charged.</summary>
public enum ChargeBasis
{
    /// <summary>Once.</summary>
    Order,

    /// <summary>For each cushion that is made.</summary>
    Cushion,

    /// <summary>For each length of fabric that is cut from a bolt.</summary>
    Cut,
}
