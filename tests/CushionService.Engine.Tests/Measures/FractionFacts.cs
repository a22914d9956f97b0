using System.Numerics;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Tests.Measures;

public sealed class FractionFacts
{
    [Theory]
    [InlineData(4, 8, 1, 2)]
    [InlineData(-4, 8, -1, 2)]
    [InlineData(4, -8, -1, 2)]
    [InlineData(0, 5, 0, 1)]
    [InlineData(7, 1, 7, 1)]
    public void A_fraction_stands_in_lowest_terms_over_a_positive_denominator(int numerator, int denominator, int lowest, int over)
    {
        var fraction = Fraction.Of(numerator, denominator);

        Assert.Equal((lowest, over), ((int)fraction.Numerator, (int)fraction.Denominator));
    }

    [Theory]
    [InlineData("0.03", 3, 100)]
    [InlineData("0.125", 1, 8)]
    [InlineData("-2.5", -5, 2)]
    [InlineData("0", 0, 1)]
    public void A_decimal_number_is_taken_exactly(string number, int numerator, int denominator) =>
        Assert.Equal(Fraction.Of(numerator, denominator), Fraction.Of(decimal.Parse(number)));

    [Fact]
    public void Nothing_is_over_nought() => Assert.Throws<DivideByZeroException>(() => Fraction.Of(1, 0));

    [Fact]
    public void The_default_fraction_is_nought() => Assert.Equal(0, default(Fraction).CeilingOf(1_000));

    [Fact]
    public void A_share_of_a_length_is_rounded_up_or_down_exactly()
    {
        var random = new Random(7);
        for (var i = 0; i < 5000; i++)
        {
            (long numerator, long denominator, long whole) = (
                random.NextInt64(-1_000_000, 1_000_000),
                random.NextInt64(1, 1_000_000),
                random.NextInt64(0, 1L << 40)
            );
            var fraction = Fraction.Of(numerator, denominator);
            var floor = (long)
                BigInteger.Divide(numerator * (BigInteger)whole - PositiveModulo(numerator * (BigInteger)whole, denominator), denominator);
            bool exact = PositiveModulo(numerator * (BigInteger)whole, denominator) == 0;

            Assert.Equal(floor, fraction.FloorOf(whole));
            Assert.Equal(exact ? floor : floor + 1, fraction.CeilingOf(whole));
        }
    }

    private static BigInteger PositiveModulo(BigInteger number, long divisor) => ((number % divisor) + divisor) % divisor;
}
