using CushionService.Engine.Measures;

namespace CushionService.Engine.Materials;

/// <summary>What the need of an item is counted in; each has a base unit.</summary>
internal enum Dimension
{
    /// <summary>One by one.</summary>
    Count,

    /// <summary>Nanometres.</summary>
    Length,

    /// <summary>Square millimetres.</summary>
    Area,

    /// <summary>Grams.</summary>
    Mass,
}

/// <summary>Base units of a dimension.</summary>
internal static class BaseUnits
{
    // 1 yd is 914.4 mm exactly (NIST Special Publication 811).
    private const decimal SquareYard = 914.4m * 914.4m;
    private const decimal SquareMetre = 1_000_000m;

    /// <summary>Base units in one unit of sale, of the same dimension or one.</summary>
    /// <param name="dimension">What is measured.</param>
    /// <param name="unit">A unit of the same dimension.</param>
    /// <exception cref="ArgumentOutOfRangeException">The unit is of another dimension: intake let pass what it should
    /// have refused.</exception>
    public static decimal In(this Dimension dimension, SaleUnit unit) =>
        (dimension, unit) switch
        {
            (Dimension.Length, SaleUnit.Yd) => Measures.Length.NanometresIn(LengthUnit.Yard),
            (Dimension.Length, SaleUnit.M) => Measures.Length.NanometresIn(LengthUnit.Metre),
            (Dimension.Area, SaleUnit.SqYd) => SquareYard,
            (Dimension.Area, SaleUnit.SqM) => SquareMetre,
            (Dimension.Mass, SaleUnit.Lb) => Mass.GramsInPound,
            (Dimension.Mass, SaleUnit.Kg) => 1000,
            (Dimension.Count, SaleUnit.Each) => 1,
            _ => throw new ArgumentOutOfRangeException(nameof(unit)),
        };
}
