using System.Text.Json;

namespace CushionService.Contract;

/// <summary>The words of an enumeration as the contract spells them: its members' names in kebab case.</summary>
internal static class Words<TEnum>
    where TEnum : struct, Enum
{
    private static readonly TEnum[] Values = Enum.GetValues<TEnum>();

    /// <summary>Every word, in the order of the members.</summary>
    public static IReadOnlyList<string> All { get; } =
    [.. Values.Select(value => JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString()))];

    /// <summary>The word of a member; the number of what is none.</summary>
    public static string Of(TEnum value) => Array.IndexOf(Values, value) is >= 0 and int index ? All[index] : value.ToString();

    /// <summary>The member that a word names, spelled exactly.</summary>
    public static TEnum? Named(string word)
    {
        for (int i = 0; i < Values.Length; i++)
        {
            if (All[i] == word)
            {
                return Values[i];
            }
        }

        return null;
    }
}
