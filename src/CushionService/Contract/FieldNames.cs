using System.Text;
using System.Text.Json;

namespace CushionService.Contract;

/// <summary>Names of the contract's fields, for programs and for people.</summary>
internal static class FieldNames
{
    /// <summary>A property path as a JSON Pointer: <c>Cushions[0].Outline.Width</c> is <c>/cushions/0/outline/width</c>.</summary>
    public static string Pointer(string path)
    {
        var pointer = new StringBuilder();
        foreach (string step in path.Split('.', StringSplitOptions.RemoveEmptyEntries))
        {
            int bracket = step.IndexOf('[', StringComparison.Ordinal);
            string name = bracket < 0 ? step : step[..bracket];
            pointer.Append('/').Append(Json(name));
            if (bracket >= 0)
            {
                pointer.Append('/').Append(step.AsSpan()[(bracket + 1)..^1]);
            }
        }

        return pointer.ToString();
    }

    /// <summary>A property as JSON names it.</summary>
    public static string Json(string name) => JsonNamingPolicy.CamelCase.ConvertName(name);

    /// <summary>A property at the start of a sentence: <c>SeamAllowance</c> is "Seam allowance".</summary>
    public static string Words(string name)
    {
        string[] words = JsonNamingPolicy.SnakeCaseLower.ConvertName(name).Split('_');
        words[0] = char.ToUpperInvariant(words[0][0]) + words[0][1..];
        return string.Join(' ', words);
    }

    /// <summary>The last property of a path at the start of a sentence: <c>Ends.Tail</c> is "Tail".</summary>
    public static string LastWords(string path) => Words(path[(path.LastIndexOf('.') + 1)..]);
}
