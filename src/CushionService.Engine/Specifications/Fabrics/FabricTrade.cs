using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>How fabric is sold where nothing says it, and how narrow it may be.</summary>
public static class FabricTrade
{
    /// <summary>The narrowest usable width between the selvedges: 1 in (common practice, no source).</summary>
    public static Length NarrowestUsable { get; } = Length.FromInches(1);

    /// <summary>The step of a sale by the yard that measures show: 1/8 yd (NIST Handbook 44, section 5.52).</summary>
    public static Length YardStep { get; } = Length.From(0.125m, LengthUnit.Yard);

    /// <summary>The step of a sale by the metre: 0.1 m (NIST Handbook 44, section 5.52).</summary>
    public static Length MetreStep { get; } = Length.From(0.1m, LengthUnit.Metre);

    /// <summary>The step of a sale by weight that scales show: a hundredth of a kilogram or a pound (common practice, no source).</summary>
    public static Fraction WeightStep { get; } = Fraction.Of(0.01m);

    /// <summary>The usual step of a unit of length.</summary>
    /// <param name="unit">Yards or metres.</param>
    public static Length StepOf(SaleUnit unit) => unit == SaleUnit.M ? MetreStep : YardStep;

    /// <summary>The length that a unit of sale is.</summary>
    /// <param name="unit">Yards or metres.</param>
    public static LengthUnit LengthOf(SaleUnit unit) => unit == SaleUnit.M ? LengthUnit.Metre : LengthUnit.Yard;
}
