namespace CushionService.Contract.Orders;

/// <summary>The form of the names that an order gives to its parts.</summary>
internal static class Identifier
{
    /// <summary>Letters, digits, dots, hyphens and underscores, 1 to 64 of them.</summary>
    public const string Pattern = "^[A-Za-z0-9._-]{1,64}$";
}
