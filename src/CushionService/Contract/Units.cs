namespace CushionService.Contract;

/// <summary>The unit of an order's lengths, and of its answer's.</summary>
public enum Units
{
    /// <summary>Inches.</summary>
    In,

    /// <summary>Centimetres.</summary>
    Cm,

    /// <summary>Millimetres.</summary>
    Mm,
}
