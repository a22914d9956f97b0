using CushionService.Engine.Measures;

namespace CushionService.Engine.Tests.Measures;

public sealed class WeightFacts
{
    [Fact]
    public void A_pound_a_cubic_foot_is_16_01846_kilograms_a_cubic_metre()
    {
        var cubicFoot = Volume.Of(In(12), In(12), In(12));

        // The printed table says 16.0185 (Sources.ConversionTable).
        Assert.Equal(1m, cubicFoot.CubicFeet);
        Assert.Equal(16.01846, 1 / (double)cubicFoot.At(1).Pounds, 1e-5);
    }

    [Fact]
    public void A_pound_is_453_59237_grams()
    {
        // Sources.InternationalYard
        Assert.Equal(1m, new Mass(453.59237m).Pounds);
        Assert.Equal(0.90718474m, (2 * new Mass(Mass.GramsInPound)).Kilograms);
    }

    [Fact]
    public void Masses_add_up() => Assert.Equal(3m, (new Mass(1000) + new Mass(2000)).Kilograms);
}
