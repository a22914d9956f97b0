namespace CushionService.Engine.Measures;

/// <summary>An amount of money, in decimal arithmetic.</summary>
/// <param name="Amount">The amount, in the currency's main unit.</param>
/// <param name="Currency">The currency; amounts of different currencies never meet.</param>
public readonly record struct Money(decimal Amount, Currency Currency)
{
    /// <summary>The amount rounded half up to the smallest coin (common practice, no source: each line is rounded, then summed).</summary>
    public Money RoundHalfUp() => this with { Amount = decimal.Round(Amount, Currency.Decimals, MidpointRounding.AwayFromZero) };

    /// <summary>A multiple, not rounded.</summary>
    public static Money operator *(decimal times, Money money) => money with { Amount = times * money.Amount };

    /// <summary>A fraction of an amount, not rounded; ties of a third stay exact.</summary>
    public static Money operator *(Fraction times, Money money) =>
        money with
        {
            Amount = (decimal)times.Numerator * money.Amount / (decimal)times.Denominator,
        };

    /// <summary>The sum.</summary>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    public static Money operator +(Money a, Money b) =>
        a.Currency == b.Currency
            ? a with
            {
                Amount = a.Amount + b.Amount,
            }
            : throw new InvalidOperationException($"{a.Currency.Code} and {b.Currency.Code} cannot be added.");

    /// <summary>The difference.</summary>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    public static Money operator -(Money a, Money b) => a + (-1 * b);

    /// <summary>The amount with the decimals of its smallest coin, without the currency.</summary>
    public override string ToString() => Amount.ToString("F" + Currency.Decimals, System.Globalization.CultureInfo.InvariantCulture);
}
