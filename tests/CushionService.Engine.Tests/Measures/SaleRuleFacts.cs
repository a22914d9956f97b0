using CushionService.Engine.Measures;

namespace CushionService.Engine.Tests.Measures;

public sealed class SaleRuleFacts
{
    [Theory]
    [InlineData("19 in", SaleUnit.Yd, "1/8", "0", "0.625", Sources.Derived)]
    [InlineData("39.5 in", SaleUnit.Yd, "1/8", "0", "1.125", Sources.Derived)]
    [InlineData("39.5 in", SaleUnit.M, "0.1", "0", "1.1", Sources.Derived)]
    [InlineData("92.5 in", SaleUnit.Yd, "1/8", "0", "2.625", Sources.Derived)]
    [InlineData("4.5 in", SaleUnit.Yd, "1/8", "0", "0.125", Sources.DefinedUnitFractions)]
    [InlineData("4.500001 in", SaleUnit.Yd, "1/8", "0", "0.25", Sources.Mathematics)]
    [InlineData("24 in", SaleUnit.Yd, "1/3", "0", "0.6666666666666666666666666667", Sources.LinearMeasures)]
    [InlineData("24.1 in", SaleUnit.Yd, "1/3", "0", "1", Sources.LinearMeasures)]
    [InlineData("3 in", SaleUnit.Yd, "1/8", "1/2", "0.5", Sources.Practice)]
    [InlineData("18.1 in", SaleUnit.Yd, "1/8", "1/2", "0.625", Sources.Practice)]
    [InlineData("26 m", SaleUnit.M, "25", "0", "50", Sources.Practice)]
    [InlineData("24.9 m", SaleUnit.M, "25", "0", "25", Sources.Practice)]
    [InlineData("3 in", SaleUnit.M, "0.1", "0.5", "0.5", Sources.Practice)]
    [InlineData("3 in", SaleUnit.M, "0.2", "0.5", "0.6", Sources.Practice)]
    [InlineData("0 in", SaleUnit.Yd, "1/4", "0", "0.25", Sources.Practice)]
    public void What_is_needed_is_sold_in_whole_steps_and_no_less_than_the_minimum(
        string needed,
        SaleUnit unit,
        string step,
        string minimum,
        string sold,
        string source
    )
    {
        LengthUnit of = unit == SaleUnit.Yd ? LengthUnit.Yard : LengthUnit.Metre;
        var rule = new SaleRule(unit, Read(step, of), Read(minimum, of));

        Assert.Equal(decimal.Parse(sold), rule.Sell(Read(needed, LengthUnit.Inch)).In(rule.LengthUnit));
    }

    [Theory]
    [InlineData("20 cm", SaleUnit.M, "1/3", "1", "1 m", 1)]
    [InlineData("1.0001 m", SaleUnit.M, "1/3", "1", "1 1/3 m", 1.3333333333333333)]
    [InlineData("20 cm", SaleUnit.M, "1/7", "2/7", "2/7 m", 0.2857142857142857)]
    [InlineData("1 m", SaleUnit.M, "2/7", "0", "1 1/7 m", 1.1428571428571428)]
    [InlineData("36 in", SaleUnit.Yd, "1/7", "0", "1 yd", 1)]
    [InlineData("36 in", SaleUnit.Yd, "1/8", "0", "1 yd", 1)]
    [InlineData("41 cm", SaleUnit.M, "0.1", "0", "0.5 m", 0.5)]
    public void Steps_are_exact_fractions_of_the_unit(string needed, SaleUnit unit, string step, string minimum, string text, double units)
    {
        // Sources.Mathematics: three thirds of a metre are 1 m, not 0.999999999 m and another third.
        LengthUnit of = unit == SaleUnit.Yd ? LengthUnit.Yard : LengthUnit.Metre;
        var rule = new SaleRule(unit, Read(step, of), Read(minimum, of));
        long steps = rule.StepsFor(Read(needed, LengthUnit.Inch));
        Fraction sold = rule.Units(steps);

        Assert.Equal(text, rule.Text(steps));
        Assert.Equal(units, (double)sold.Numerator / (double)sold.Denominator, 1e-15);
    }

    // 250 g/m² on 140 cm weigh 350 g a metre, 8 oz/yd² on 54 in 12 oz a yard: 3/4 lb (general mathematics; example 3 of the trade's figures
    // has 12 oz/yd² on 54 in, 18 oz a yard). 8 oz/yd² are 271.2459 g/m², counted as 271.2.
    [Theory]
    [InlineData("129 cm", SaleUnit.Kg, "140 cm", "250", "0.01", "0", "0.46 kg")]
    [InlineData("40 cm", SaleUnit.Kg, "140 cm", "250", "0.01", "0", "0.14 kg")]
    [InlineData("40.0001 cm", SaleUnit.Kg, "140 cm", "250", "0.01", "0", "0.15 kg")]
    [InlineData("40 cm", SaleUnit.Kg, "140 cm", "250", "1/3", "1/2", "2/3 kg")]
    [InlineData("10 m", SaleUnit.Kg, "150 cm", "200", "0.5", "0", "3 kg")]
    [InlineData("1 yd", SaleUnit.Lb, "54 in", "271.2", "0.01", "0", "0.75 lb")]
    [InlineData("3 yd", SaleUnit.Lb, "54 in", "271.2", "1/4", "0", "2.25 lb")]
    [InlineData("20000 in", SaleUnit.Lb, "240 in", "4999.9", "0.01", "0", "34135.35 lb")]
    public void A_length_is_sold_by_its_weight(
        string needed,
        SaleUnit unit,
        string width,
        string grams,
        string step,
        string minimum,
        string sold
    )
    {
        var weight = new FabricWeight(decimal.Parse(grams), Read(width, LengthUnit.Inch));
        var rule = SaleRule.ByWeight(unit, Quantity(step), Quantity(minimum), weight);
        Length length = Read(needed, LengthUnit.Inch);

        Assert.Equal(sold, rule.Text(rule.StepsFor(length)));
        Assert.True(rule.Sell(length) >= length);
        Assert.True(rule.Sell(length) - rule.Step < length || rule.StepsFor(length) == rule.LeastSteps);

        static Fraction Quantity(string text) => FractionText.TryParse(text, out Fraction read) ? read : default;
    }

    [Fact]
    public void As_many_steps_as_make_whole_units_are_whole_units()
    {
        // Every fraction p/q to q = 64 of either unit: q steps of p/q hold p units exactly, and one nanometre more takes another step.
        foreach (SaleUnit unit in new[] { SaleUnit.Yd, SaleUnit.M })
        {
            LengthUnit of = unit == SaleUnit.Yd ? LengthUnit.Yard : LengthUnit.Metre;
            for (int denominator = 1; denominator <= 64; denominator++)
            {
                for (int numerator = 1; numerator <= denominator; numerator++)
                {
                    var rule = new SaleRule(unit, Read($"{numerator}/{denominator}", of), Length.Zero);
                    Length whole = Length.From(numerator, of);

                    Assert.Equal(denominator, rule.StepsFor(whole));
                    Assert.Equal(denominator + 1, rule.StepsFor(whole + Length.FromNanometres(1)));
                    Assert.Equal(whole, rule.Sell(whole));
                }
            }
        }
    }

    private static Length Read(string text, LengthUnit unit) =>
        LengthText.TryParse(text, unit, out Length length) ? length : throw new FormatException(text);
}
