using System.Globalization;
using Google.Type;

namespace CushionService.Grpc.Mapping;

/// <summary>Decimal text, as the contract has it, and google.type.Money.</summary>
internal static class Amounts
{
    private const int NanosInUnit = 1_000_000_000;

    /// <summary>The amount as decimal text; null for none, and for one that is no amount of the order's currency, which is a
    /// doubt.</summary>
    public static string? Read(Money? money, MappingErrors errors)
    {
        if (money is null)
        {
            return null;
        }

        if (FaultOf(money, errors.Currency) is not null)
        {
            errors.Any = true;
            return null;
        }

        return (money.Units + (decimal)money.Nanos / NanosInUnit).ToString("0.#########", CultureInfo.InvariantCulture);
    }

    /// <summary>Why an amount cannot be read; null when it can.</summary>
    public static (string Code, string Detail)? FaultOf(Money money, string currency)
    {
        bool sameSign = money.Units == 0 || money.Nanos == 0 || (money.Units > 0 == money.Nanos > 0);
        return Math.Abs((long)money.Nanos) >= NanosInUnit || !sameSign
                ? ("not-an-amount", "The nanos must be below 1 000 000 000 and of the same sign as the units.")
            : money.CurrencyCode.Length > 0 && currency.Length > 0 && money.CurrencyCode != currency
                ? ("wrong-currency", $"The order's currency is {currency}; an amount may not be in another.")
            : null;
    }

    /// <summary>Money of decimal text.</summary>
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
