namespace CushionService.Engine.Measures;

/// <summary>What a fabric weighs, selvedges and all.</summary>
/// <param name="GramsPerSquareMetre">Mass of an area, above zero (ASTM D3776 has the ways to measure it); counted to a tenth of a
/// gram.</param>
/// <param name="Width">The whole width of the bolt, above zero.</param>
public sealed record FabricWeight(decimal GramsPerSquareMetre, Length Width)
{
    private const decimal NanometresInMetre = 1_000_000_000;
    private const decimal GramsInKilogram = 1_000;

    // A hundred-thousandth of a gram is a pound's last digit.
    private const long PoundDigits = 100_000;

    /// <summary>The length that weighs one unit, in nanometres, exact: unit / (weight × width) (general arithmetic).</summary>
    /// <param name="unit">Pounds or kilograms.</param>
    public Fraction NanometresIn(SaleUnit unit)
    {
        Int128 grams = (Int128)((unit == SaleUnit.Lb ? Mass.GramsInPound : GramsInKilogram) * PoundDigits),
            tenths = (Int128)decimal.Round(GramsPerSquareMetre * 10, MidpointRounding.AwayFromZero),
            squareNanometres = (Int128)(NanometresInMetre * NanometresInMetre);
        return Fraction.Of(grams * squareNanometres * 10, PoundDigits * tenths * Width.Nanometres);
    }

    /// <summary>What a length weighs, to 0.0001 of the unit.</summary>
    public SaleAmount Of(Length length, SaleUnit unit)
    {
        Fraction one = NanometresIn(unit);
        return SaleAmount.Of(decimal.Round(length.Nanometres * (decimal)one.Denominator / (decimal)one.Numerator, 4), unit);
    }
}
