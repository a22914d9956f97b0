namespace CushionService.Contract.Orders;

/// <summary>The form of an amount of money.</summary>
internal static class Amount
{
    /// <summary>A decimal number, at least 0, with at most 6 decimals.</summary>
    public const string Pattern = @"^[0-9]{1,9}(\.[0-9]{1,6})?$";
}
