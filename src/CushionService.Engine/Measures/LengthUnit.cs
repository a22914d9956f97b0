namespace CushionService.Engine.Measures;

/// <summary>A unit of length. The international yard is exactly 0.9144 m (Federal Register, 1 July 1959).</summary>
public enum LengthUnit
{
    /// <summary>25.4 mm.</summary>
    Inch,

    /// <summary>10 mm.</summary>
    Centimetre,

    /// <summary>1 mm.</summary>
    Millimetre,

    /// <summary>36 in.</summary>
    Yard,

    /// <summary>1000 mm.</summary>
    Metre,
}
