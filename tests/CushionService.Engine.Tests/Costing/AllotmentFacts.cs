using System.Collections.Immutable;
using CushionService.Engine.Costing;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Tests.Costing;

/// <summary>Shares sum to the whole, and each is fair to the coin.</summary>
public sealed class AllotmentFacts
{
    [Theory]
    [InlineData("10.00", "USD", new[] { 1, 1, 1 }, "3.34 3.33 3.33")]
    [InlineData("-0.05", "USD", new[] { 2, 1, 1 }, "-0.03 -0.01 -0.01")]
    [InlineData("100", "JPY", new[] { 1, 1, 1 }, "34 33 33")]
    [InlineData("1.000", "KWD", new[] { 1, 2, 4 }, "0.143 0.286 0.571")]
    [InlineData("7.00", "USD", new[] { 0, 5, 0 }, "0.00 7.00 0.00")]
    [InlineData("0.03", "USD", new[] { 0, 0 }, "0.02 0.01")]
    public void The_coins_that_are_left_go_to_the_largest_remainders(string whole, string currency, int[] weights, string shares)
    {
        // Sources.Mathematics
        ImmutableArray<Money> allotted = Allotment.Of(
            new Money(decimal.Parse(whole), new Currency(currency)),
            [.. weights.Select(weight => (Int128)weight)]
        );

        Assert.Equal(shares, string.Join(' ', allotted));
    }

    [Fact]
    public void Shares_sum_to_the_whole_and_none_is_a_coin_from_its_quota()
    {
        var random = new Random(1);
        for (var round = 0; round < 5000; round++)
        {
            var whole = new Money(random.Next(-1_000_000, 1_000_000) / 100m, new Currency("USD"));
            Int128[] weights =
            [
                .. Enumerable.Range(0, random.Next(1, 12)).Select(_ => (Int128)random.NextInt64(long.MaxValue) * (1 + random.Next(1000))),
            ];
            ImmutableArray<Money> shares = Allotment.Of(whole, weights);
            double sum = weights.Sum(weight => (double)weight);

            Assert.Equal(whole.Amount, shares.Sum(share => share.Amount));
            Assert.All(
                shares.Zip(weights),
                pair =>
                    Assert.InRange((double)pair.First.Amount - ((double)whole.Amount * (double)pair.Second / sum), -0.0100001, 0.0100001)
            );
        }
    }

    [Fact]
    public void What_is_finer_than_a_coin_cannot_be_shared() =>
        Assert.Throws<ArgumentException>(() => Allotment.Of(new Money(0.005m, new Currency("USD")), [1, 1]));
}
