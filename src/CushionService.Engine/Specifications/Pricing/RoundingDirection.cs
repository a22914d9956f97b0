namespace CushionService.Engine.Specifications.Pricing;

/// <summary>Which way a price is rounded.</summary>
public enum RoundingDirection
{
    /// <summary>To the nearest, halves up.</summary>
    Nearest,

    /// <summary>Up.</summary>
    Up,
}
