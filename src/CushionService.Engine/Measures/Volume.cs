namespace CushionService.Engine.Measures;

/// <summary>A volume.</summary>
/// <param name="CubicMillimetres">At least 0.</param>
public readonly record struct Volume(decimal CubicMillimetres)
{
    private const decimal MillimetresInFoot = 304.8m;

    /// <summary>Cubic millimetres in a cubic metre.</summary>
    private const decimal CubicMetre = 1_000_000_000m;

    /// <summary>The volume of a block.</summary>
    public static Volume Of(Length width, Length length, Length height) =>
        new(width.In(LengthUnit.Millimetre) * length.In(LengthUnit.Millimetre) * height.In(LengthUnit.Millimetre));

    /// <summary>The volume in cubic feet.</summary>
    public decimal CubicFeet => CubicMillimetres / (MillimetresInFoot * MillimetresInFoot * MillimetresInFoot);

    /// <summary>What the volume weighs.</summary>
    /// <param name="kilogramsPerCubicMetre">Density, at least 0; 1 lb/ft³ is 16.01846 kg/m³.</param>
    public Mass At(decimal kilogramsPerCubicMetre) => new(CubicMillimetres / CubicMetre * kilogramsPerCubicMetre * 1000);
}
