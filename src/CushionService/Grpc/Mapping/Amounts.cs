using System.Globalization;
using CushionService.Engine.Messages;
using Google.Type;

namespace CushionService.Grpc.Mapping;

/// <summary>Maps amounts: decimal text in the contract, <c>google.type.Money</c> in messages. Money has whole units and
/// billionths of a unit (nanos), which must not have opposite signs.</summary>
internal static class Amounts
{
    private const int NanosInUnit = 1_000_000_000;

    /// <summary>The amount as decimal text, without trailing zeros.</summary>
    /// <param name="money">The amount of the message; null when it has none.</param>
    /// <param name="errors">Notes an amount that is malformed, or in another currency than the order's.</param>
    /// <returns>The text; null without an amount, and after an error.</returns>
    public static string? Read(Money? money, MappingErrors errors)
    {
        if (money is null)
        {
            return null;
        }

        if (ErrorOf(money, errors.Currency) is not null)
        {
            errors.Any = true;
            return null;
        }

        return (money.Units + (decimal)money.Nanos / NanosInUnit).ToString("0.#########", CultureInfo.InvariantCulture);
    }

    /// <summary>Why an amount cannot be mapped, as a code and a message; null when it can.</summary>
    /// <param name="money">The amount.</param>
    /// <param name="currency">The order's currency; empty when it names none.</param>
    public static (string Code, Message Detail)? ErrorOf(Money money, string currency)
    {
        bool sameSign = money.Units == 0 || money.Nanos == 0 || (money.Units > 0 == money.Nanos > 0);
        // A long, since the absolute value of the least int is none.
        return Math.Abs((long)money.Nanos) >= NanosInUnit || !sameSign ? ("bad-form", MappingTexts.Nanos)
            : money.CurrencyCode.Length > 0 && currency.Length > 0 && money.CurrencyCode != currency
                ? ("wrong-currency", MappingTexts.Currency(currency))
            : null;
    }

    /// <summary>Money of decimal text with at most nine decimals, as every amount of an answer is.</summary>
    /// <param name="amount">The amount.</param>
    /// <param name="currency">Its ISO 4217 code.</param>
    public static Money Write(string amount, string currency)
    {
        decimal value = decimal.Parse(amount, NumberStyles.Number, CultureInfo.InvariantCulture);
        decimal units = decimal.Truncate(value);
        return new Money
        {
            CurrencyCode = currency,
            Units = (long)units,
            Nanos = (int)((value - units) * NanosInUnit),
        };
    }
}
