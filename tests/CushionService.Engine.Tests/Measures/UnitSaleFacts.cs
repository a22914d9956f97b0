using CushionService.Engine.Measures;

namespace CushionService.Engine.Tests.Measures;

public sealed class UnitSaleFacts
{
    [Theory]
    [InlineData(SaleUnit.Yd, 0.125, Sources.LinearMeasures)]
    [InlineData(SaleUnit.M, 0.1, Sources.LinearMeasures)]
    [InlineData(SaleUnit.Each, 1, Sources.Practice)]
    [InlineData(SaleUnit.Lb, 0.01, Sources.Practice)]
    [InlineData(SaleUnit.SqM, 0.01, Sources.Practice)]
    public void The_usual_step_of_a_unit(SaleUnit unit, double step, string source) =>
        Assert.Equal((Fraction)(decimal)step, UnitSale.Usual(unit).Step);

    [Theory]
    [InlineData(1.25, 0.25, 0, 1.25)]
    [InlineData(1.26, 0.25, 0, 1.5)]
    [InlineData(0.1, 0.25, 1, 1)]
    [InlineData(0.1, 0.25, 0.9, 1)]
    [InlineData(1.01, 4, 0, 4)]
    [InlineData(0, 4, 0, 4)]
    public void What_is_needed_is_sold_in_whole_steps_and_no_less_than_the_minimum(
        double needed,
        double step,
        double minimum,
        double sold
    ) => Assert.Equal((Fraction)(decimal)sold, new UnitSale(SaleUnit.Yd, (decimal)step, (decimal)minimum).Sell((decimal)needed));

    // Whole numbers of parts: general mathematics. In decimals two thirds would be a little more than two steps of a third.
    [Theory]
    [InlineData(1, 3, 1, 3, 1)]
    [InlineData(2, 3, 1, 3, 2)]
    [InlineData(1, 1, 1, 3, 3)]
    [InlineData(6, 7, 1, 7, 6)]
    [InlineData(6, 7, 2, 7, 3)]
    [InlineData(1, 1, 2, 7, 4)]
    [InlineData(400_000_001, 600_000_000, 1, 3, 3)]
    public void Steps_of_thirds_and_sevenths_are_exact(int needed, int of, int step, int parts, int steps) =>
        Assert.Equal(Fraction.Of(steps * step, parts), new UnitSale(SaleUnit.M, Fraction.Of(step, parts), 0).Sell(Fraction.Of(needed, of)));

    [Theory]
    [InlineData("1/3", 1, 3)]
    [InlineData("1 1/3", 4, 3)]
    [InlineData("1-1/2", 3, 2)]
    [InlineData(" 2/7 ", 2, 7)]
    [InlineData("0.25", 1, 4)]
    [InlineData("1e-1", 1, 10)]
    [InlineData("0.3333333333", 333_333_333, 1_000_000_000)]
    public void A_quantity_is_read_exactly(string text, long numerator, long denominator) =>
        Assert.Equal((true, Fraction.Of(numerator, denominator)), (FractionText.TryParse(text, out Fraction read), read));

    [Theory]
    [InlineData("")]
    [InlineData("1/0")]
    [InlineData("-1/3")]
    [InlineData("/3")]
    [InlineData("1//3")]
    [InlineData("1/3 yd")]
    [InlineData("1/10001")]
    [InlineData("one third")]
    [InlineData("-1")]
    [InlineData("1e30")]
    public void What_is_no_quantity_is_not_read(string text) => Assert.False(FractionText.TryParse(text, out _));
}
