using System.Text.Json;

namespace CushionService.Documents;

/// <summary>Prints a value of an enumeration as words: <c>HookAndLoopTape</c> as "hook and loop tape".</summary>
internal static class KindText
{
    public static string Of<T>(T kind)
        where T : struct, Enum => JsonNamingPolicy.KebabCaseLower.ConvertName(kind.ToString()).Replace('-', ' ');
}
