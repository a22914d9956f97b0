namespace CushionService.Contract.Orders;

/// <summary>The form of a currency (ISO 4217).</summary>
internal static class CurrencyCode
{
    /// <summary>Three capital letters.</summary>
    public const string Pattern = "^[A-Z]{3}$";
}
