namespace CushionService.Engine.Measures;

/// <summary>The unit in which an item is sold.</summary>
public enum SaleUnit
{
    /// <summary>Yards of length.</summary>
    Yd,

    /// <summary>Metres of length.</summary>
    M,

    /// <summary>Pounds of weight.</summary>
    Lb,

    /// <summary>Kilograms of weight.</summary>
    Kg,

    /// <summary>One by one.</summary>
    Each,

    /// <summary>Square yards of area.</summary>
    SqYd,

    /// <summary>Square metres of area.</summary>
    SqM,
}
