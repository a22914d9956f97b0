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
        Assert.Equal((decimal)step, UnitSale.Usual(unit).Step);

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
    ) => Assert.Equal((decimal)sold, new UnitSale(SaleUnit.Yd, (decimal)step, (decimal)minimum).Sell((decimal)needed));
}
