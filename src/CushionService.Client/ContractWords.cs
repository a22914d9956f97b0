namespace CushionService.Client;

/// <summary>Words of enumerations as the contract spells them, to print or to compare.</summary>
public static class ContractWords
{
    /// <summary>The word of a member: <c>SaleUnit.SqYd.Word()</c> is <c>sq-yd</c>.</summary>
    /// <typeparam name="T">The enumeration.</typeparam>
    /// <param name="value">The member.</param>
    /// <returns>The word; <c>unknown</c> where the service has said a word of a later release.</returns>
    public static string Word<T>(this T value)
        where T : struct, Enum => WordConverter<T>.WordOf(value) ?? "unknown";
}
