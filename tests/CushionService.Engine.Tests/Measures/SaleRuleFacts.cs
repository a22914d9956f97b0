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

    private static Length Read(string text, LengthUnit unit) =>
        LengthText.TryParse(text, unit, out Length length) ? length : throw new FormatException(text);
}
