namespace CushionService.Engine.Specifications.Pricing;

/// <summary>What a discount is taken from.</summary>
public enum DiscountBase
{
    /// <summary>The whole price.</summary>
    All,

    /// <summary>The lines of fabric.</summary>
    Fabric,
}
