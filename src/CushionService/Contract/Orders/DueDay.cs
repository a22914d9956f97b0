namespace CushionService.Contract.Orders;

/// <summary>The form of a day.</summary>
internal static class DueDay
{
    /// <summary>A full date of RFC 3339: year, month and day.</summary>
    public const string Pattern = "^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$";
}
