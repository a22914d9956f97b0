using System.Collections.Immutable;
using System.Numerics;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Costing;

/// <summary>Shares an amount so that the shares sum to it exactly.</summary>
/// <remarks>The method of largest remainders (Hamilton's): every share is its quota down to whole coins; the coins that are left go one
/// each to the largest remainders, the earlier share first among equals. No share is a coin or more from its quota.</remarks>
public static class Allotment
{
    /// <summary>The shares of an amount.</summary>
    /// <param name="whole">The amount, in whole coins.</param>
    /// <param name="weights">What each share is in proportion to, at least 0; shares are equal where all are 0.</param>
    /// <exception cref="ArgumentException">The amount is not in whole coins, or there is no share.</exception>
    public static ImmutableArray<Money> Of(Money whole, ReadOnlySpan<Int128> weights)
    {
        // The smallest coin of the currency: 0.01 of a dollar, 1 of a yen (ISO 4217 says how many decimals each has).
        decimal coin = (decimal)Math.Pow(10, -whole.Currency.Decimals),
            coins = Math.Abs(whole.Amount) / coin;
        if (weights.IsEmpty || !decimal.IsInteger(coins))
        {
            throw new ArgumentException($"{whole} cannot be shared {weights.Length} ways.");
        }

        BigInteger sum = 0;
        foreach (Int128 weight in weights)
        {
            sum += weight;
        }

        var shares = new BigInteger[weights.Length];
        var remainders = new BigInteger[weights.Length];
        var left = (BigInteger)coins;
        for (var i = 0; i < shares.Length; i++)
        {
            // Big integers: an amount in coins times an area in square nanometres outgrows 128 bits.
            shares[i] = BigInteger.DivRem(
                (BigInteger)coins * (sum.IsZero ? 1 : weights[i]),
                sum.IsZero ? shares.Length : sum,
                out remainders[i]
            );
            left -= shares[i];
        }

        int[] order = [.. Enumerable.Range(0, shares.Length).OrderByDescending(i => remainders[i])];
        for (var i = 0; i < left; i++)
        {
            shares[order[i]]++;
        }

        decimal sign = whole.Amount < 0 ? -coin : coin;
        return [.. shares.Select(share => whole with { Amount = (decimal)share * sign })];
    }
}
