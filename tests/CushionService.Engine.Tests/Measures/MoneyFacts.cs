using CushionService.Engine.Measures;

namespace CushionService.Engine.Tests.Measures;

public sealed class MoneyFacts
{
    [Theory]
    [InlineData("USD", "30.7125", "30.71", Sources.Practice)]
    [InlineData("USD", "30.715", "30.72", Sources.Practice)]
    [InlineData("USD", "30.705", "30.71", Sources.Practice)]
    [InlineData("USD", "0.005", "0.01", Sources.Practice)]
    [InlineData("USD", "0.0049999", "0.00", Sources.Practice)]
    [InlineData("USD", "2.675", "2.68", Sources.Mathematics)]
    [InlineData("JPY", "1050.5", "1051", Sources.CurrencyCodes)]
    [InlineData("KWD", "1.2345", "1.235", Sources.CurrencyCodes)]
    [InlineData("EUR", "5", "5.00", Sources.CurrencyCodes)]
    public void An_amount_is_rounded_half_up_to_the_smallest_coin(string currency, string amount, string rounded, string source) =>
        Assert.Equal(rounded, new Money(decimal.Parse(amount), new Currency(currency)).RoundHalfUp().ToString());

    [Fact]
    public void Decimal_money_does_not_drift()
    {
        var cent = new Money(0.1m, new Currency("USD"));
        Money sum = Enumerable.Repeat(cent, 10).Aggregate((a, b) => a + b);

        Assert.Equal(new Money(1.0m, new Currency("USD")), sum);
        Assert.Equal("0.30", (3 * cent).ToString());
    }

    [Fact]
    public void Different_currencies_never_meet() =>
        Assert.Throws<InvalidOperationException>(() => new Money(1, new Currency("USD")) + new Money(1, new Currency("EUR")));
}
